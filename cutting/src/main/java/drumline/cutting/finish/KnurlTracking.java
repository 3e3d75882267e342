package drumline.cutting.finish;

import drumline.cutting.validity.Require;

/**
 * Blank diameter on which a knurl falls into its own teeth again.
 *
 * <p>teeth on the work = D·zk/(Dk + c), to be a whole number; blank diameter for zb teeth =
 * zb/zk·(Dk + c), c a correction of the knurl's diameter.
 *
 * <p>Source: [FRD], with c = 0.007 in (0.178 mm) and the example of a 47-tooth knurl.
 *
 * @param knurlTeethCount teeth zk of the knurl, at least 3
 * @param knurlDiameterMm diameter Dk of the knurl, above 0
 * @param correctionMm correction c, 0 or more
 */
public record KnurlTracking(int knurlTeethCount, double knurlDiameterMm, double correctionMm) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public KnurlTracking {
    Require.atLeast("knurlTeethCount", knurlTeethCount, 3);
    Require.positive("knurlDiameterMm", knurlDiameterMm);
    Require.notNegative("correctionMm", correctionMm);
  }

  /**
   * Teeth on the work, not rounded.
   *
   * @param blankDiameterMm diameter D of the blank, above 0
   * @throws IllegalArgumentException if the diameter is not above 0
   */
  public double teethCount(double blankDiameterMm) {
    Require.positive("blankDiameterMm", blankDiameterMm);
    return blankDiameterMm * knurlTeethCount / (knurlDiameterMm + correctionMm);
  }

  /**
   * Blank diameter for a whole number of teeth.
   *
   * @param workTeethCount teeth zb on the work, at least 3
   * @throws IllegalArgumentException if the number is below 3
   */
  public double blankDiameterMm(int workTeethCount) {
    Require.atLeast("workTeethCount", workTeethCount, 3);
    return (double) workTeethCount / knurlTeethCount * (knurlDiameterMm + correctionMm);
  }

  /**
   * Largest blank diameter, not above the given one, on which the knurl tracks.
   *
   * @param blankDiameterMm diameter D, at least that of three teeth
   * @throws IllegalArgumentException if fewer than three teeth fit
   */
  public double trackingDiameterMm(double blankDiameterMm) {
    return blankDiameterMm((int) Math.floor(teethCount(blankDiameterMm) + 1e-9));
  }
}
