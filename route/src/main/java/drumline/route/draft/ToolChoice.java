package drumline.route.draft;

import drumline.shop.material.CuttingWindow;
import drumline.shop.tooling.Tool;

/**
 * A tool with the cutting values it works with.
 *
 * @param featureId element or feature that it works on
 * @param tool the tool
 * @param window cutting values of the material for it
 */
public record ToolChoice(String featureId, Tool tool, CuttingWindow window) {}
