package drumline.shop.tooling;

import drumline.shop.material.ToolMaterial;
import java.math.BigDecimal;

/**
 * Tools of one kind in a range of sizes, from which the route takes the one it needs.
 *
 * @param name what a tool list calls it
 * @param kind kind of tool
 * @param toolMaterial what the edge is made of
 * @param smallestMm smallest size: diameter, or cutting width of blades
 * @param largestMm largest size
 * @param noseRadiusMm corner radius, 0 where there is none (ISO 13399 RE)
 * @param leadAngleDeg tool cutting edge angle κ, or point angle of a drill
 * @param teethCount teeth that cut at once round the tool, 1 for turning tools
 * @param edgesCount edges used up before a new one is bought, regrinds included
 * @param lengthRatio reach over diameter or width that it can stand
 * @param price price of one tool or insert, in the library's currency
 * @param pricePerMm added price for each mm of size
 * @param currency ISO 4217 code
 * @param changeMin minutes the machine stands to change one edge
 * @param source where the figures come from
 */
public record ToolFamily(
    String name,
    ToolKind kind,
    ToolMaterial toolMaterial,
    double smallestMm,
    double largestMm,
    double noseRadiusMm,
    double leadAngleDeg,
    int teethCount,
    int edgesCount,
    double lengthRatio,
    BigDecimal price,
    BigDecimal pricePerMm,
    String currency,
    double changeMin,
    String source) {

  /** Whether a tool of this size belongs to the family. */
  public boolean covers(double sizeMm) {
    return sizeMm >= smallestMm && sizeMm <= largestMm;
  }

  /** The tool of this size. */
  public Tool tool(double sizeMm) {
    BigDecimal cost = price.add(pricePerMm.multiply(BigDecimal.valueOf(sizeMm)));
    return new Tool(this, sizeMm, cost);
  }
}
