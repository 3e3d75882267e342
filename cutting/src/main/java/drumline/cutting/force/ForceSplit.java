package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Feed force and passive force as shares of the main force, where only the main force is known.
 *
 * <p>Ff = rf·Fc (against the feed), Fp = rp·Fc (square to feed and cutting speed).
 *
 * <p>Source: from memory, orders of magnitude: rf 0.3–0.5 and rp 0.2–0.4 near κ = 90°; rp 0.5–0.7
 * at κ = 45° or when the nose radius is as large as the depth.
 *
 * @param feedForceRatio rf, 0 … 2
 * @param passiveForceRatio rp, 0 … 2
 */
public record ForceSplit(double feedForceRatio, double passiveForceRatio) {
  /** Edge nearly square to the feed. */
  public static final ForceSplit SQUARE_EDGE = new ForceSplit(0.4, 0.3);

  /** Edge at 45° or a nose radius of at least the depth. */
  public static final ForceSplit SLANTED_EDGE = new ForceSplit(0.4, 0.6);

  /** Grooving, cut-off and form tools, fed straight in: rf 0.5–0.8, none sideways; from memory. */
  public static final ForceSplit STRAIGHT_IN = new ForceSplit(0.65, 0);

  /**
   * @throws IllegalArgumentException if a share is outside its range
   */
  public ForceSplit {
    Require.between("feedForceRatio", feedForceRatio, 0, 2);
    Require.between("passiveForceRatio", passiveForceRatio, 0, 2);
  }
}
