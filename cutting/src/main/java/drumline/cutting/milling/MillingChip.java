package drumline.cutting.milling;

import drumline.cutting.validity.Require;

/**
 * Mean chip of a milling cutter.
 *
 * <p>Contact angle: φs = arccos(1 − 2·ae/D) from the side, φs = 2·arcsin(ae/D) centred; hm =
 * (360/(π· φs°))·(ae/D)·fz·sin κ.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, mean chip thickness in milling.
 *
 * @param cutterDiameterMm cutter diameter D, above 0
 * @param engagementMm width of cut ae, square to the cutter's axis, above 0 to D
 * @param feedPerToothMm feed fz, above 0
 * @param edgeAngleDeg edge angle κ, 90 for end mills, above 0 to 90
 * @param place where the cut lies in the cutter's path
 */
public record MillingChip(
    double cutterDiameterMm,
    double engagementMm,
    double feedPerToothMm,
    double edgeAngleDeg,
    Place place) {
  /** Where the cut lies in the cutter's path. */
  public enum Place {
    /** Along one side: side milling, slot milling when ae = D. */
    ONE_SIDE,
    /** Under the middle of the cutter: face milling. */
    CENTRED
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public MillingChip {
    Require.positive("cutterDiameterMm", cutterDiameterMm);
    Require.positive("engagementMm", engagementMm);
    Require.between("engagementMm", engagementMm, 0, cutterDiameterMm);
    Require.positive("feedPerToothMm", feedPerToothMm);
    Require.positive("edgeAngleDeg", edgeAngleDeg);
    Require.between("edgeAngleDeg", edgeAngleDeg, 0, 90);
  }

  /** Angle φs through which a tooth is in contact. */
  public double contactAngleDeg() {
    double share = engagementMm / cutterDiameterMm;
    double radians = place == Place.ONE_SIDE ? Math.acos(1 - 2 * share) : 2 * Math.asin(share);
    return Math.toDegrees(radians);
  }

  /** Mean chip thickness hm. */
  public double meanThicknessMm() {
    return 360
        / (Math.PI * contactAngleDeg())
        * (engagementMm / cutterDiameterMm)
        * feedPerToothMm
        * Math.sin(Math.toRadians(edgeAngleDeg));
  }
}
