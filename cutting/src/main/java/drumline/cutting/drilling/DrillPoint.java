package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Length of a drill's point.
 *
 * <p>A = d/(2·tan(σ/2)); for an enlarged hole A = (d − d0)/(2·tan(σ/2)).
 *
 * <p>Source: geometry. The form (d/2)·tan 59° seen in print ([EXPM-T]) is wrong: it gives 0.83·d
 * instead of 0.300·d for a point of 118°.
 */
public final class DrillPoint {
  private DrillPoint() {}

  /**
   * Length A from the tip to the full diameter.
   *
   * @param diameterMm diameter d, above 0
   * @param pointAngleDeg point angle σ, above 0 to 180 (flat)
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double lengthMm(double diameterMm, double pointAngleDeg) {
    return lengthMm(diameterMm, 0, pointAngleDeg);
  }

  /**
   * Length of the part of the point that cuts when a hole is enlarged.
   *
   * @param diameterMm diameter d, above 0
   * @param startDiameterMm diameter d0 of the hole already there, 0 … d
   * @param pointAngleDeg point angle σ, above 0 to 180 (flat)
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double lengthMm(double diameterMm, double startDiameterMm, double pointAngleDeg) {
    Require.positive("diameterMm", diameterMm);
    Require.between("startDiameterMm", startDiameterMm, 0, diameterMm);
    Require.positive("pointAngleDeg", pointAngleDeg);
    Require.between("pointAngleDeg", pointAngleDeg, 0, 180);
    double half = Math.toRadians(pointAngleDeg / 2);
    return (diameterMm - startDiameterMm) / 2 * Math.cos(half) / Math.sin(half);
  }
}
