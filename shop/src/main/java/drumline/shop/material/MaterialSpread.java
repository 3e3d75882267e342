package drumline.shop.material;

/**
 * A material at either end of what its cutting figures may be: all of them off to the same side,
 * since a bar that cuts worse than thought does so under every tool.
 *
 * <p>Speed and feed of one window are known apart from each other, so their relative spreads s and
 * f add as the root of their squares: both move by the share w = √(s² + f²) / (s + f) of their own
 * spread. The specific force moves the other way, by its whole spread.
 *
 * <p>Source: addition of independent uncertainties, [GUM] clause 5.1.2, from memory; one side for
 * all windows is a choice on the safe side.
 */
public final class MaterialSpread {
  private MaterialSpread() {}

  /** The material as it cuts at its worst: slower, finer, with more force. */
  public static Material worst(Material material) {
    return moved(material, -1);
  }

  /** The material as it cuts at its best: faster, coarser, with less force. */
  public static Material best(Material material) {
    return moved(material, 1);
  }

  private static Material moved(Material material, int side) {
    double forceRatio = 1 - side * material.force().confidence().spread().forcePct() / 100;
    return material.withCutting(
        material.force().scaled(forceRatio),
        material.windows().stream().map(window -> moved(window, side)).toList());
  }

  private static CuttingWindow moved(CuttingWindow window, int side) {
    Confidence.Spread spread = window.confidence().spread();
    double speed = spread.speedPct() / 100;
    double feed = window.process().feedIsPitch() ? 0 : spread.feedPct() / 100;
    double share = Math.hypot(speed, feed) / (speed + feed);
    return window.scaled(1 + side * share * speed, 1 + side * share * feed);
  }
}
