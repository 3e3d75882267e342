package drumline.route.draft;

import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.Material;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.util.List;
import java.util.Optional;

/**
 * The tools at hand for one material.
 *
 * @param families tool library, in order of preference
 * @param material what is cut
 */
public record ToolCrib(List<ToolFamily> families, Material material) {

  /** Copies the list. */
  public ToolCrib {
    families = List.copyOf(families);
  }

  /**
   * A tool of a kind and size for a process: the first family whose tool material the work material
   * has cutting values for, in the material's order of preference.
   */
  public Optional<ToolChoice> find(
      String featureId, ToolKind kind, CuttingProcess process, double sizeMm) {
    for (CuttingWindow window : material.windows()) {
      if (window.process() != process) {
        continue;
      }
      for (ToolFamily family : families) {
        if (family.kind() == kind
            && family.toolMaterial() == window.toolMaterial()
            && family.covers(sizeMm)) {
          return Optional.of(new ToolChoice(featureId, family.tool(sizeMm), window));
        }
      }
    }
    return Optional.empty();
  }

  /** A tool of a kind and size, whatever it is made of. */
  public Optional<Tool> findTool(ToolKind kind, double sizeMm) {
    return families.stream()
        .filter(family -> family.kind() == kind && family.covers(sizeMm))
        .map(family -> family.tool(sizeMm))
        .findFirst();
  }

  /** The greatest size of a kind that the material can be cut with in a process, 0 if none. */
  public double largestMm(ToolKind kind, CuttingProcess process) {
    return families.stream()
        .filter(f -> f.kind() == kind)
        .filter(f -> material.findWindow(process, f.toolMaterial()).isPresent())
        .mapToDouble(ToolFamily::largestMm)
        .max()
        .orElse(0);
  }
}
