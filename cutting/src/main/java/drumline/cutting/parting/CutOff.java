package drumline.cutting.parting;

import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedFacing;
import drumline.cutting.validity.Require;

/**
 * Parting the piece from bar or tube, with less feed near the end of the cut.
 *
 * <p>Normal feed from the outside to the reduction diameter, reduced feed from there to the end
 * diameter and over the overrun. A bar ends at the pip (or at 0), a tube at its bore.
 *
 * <p>Source: [BASIS] 2.9; reducing to 30–50 % below 2–3 mm diameter is common practice, from
 * memory.
 *
 * @param outerDiameterMm diameter D at which the cut begins, above 0
 * @param endDiameterMm diameter at which the piece is free: bore, pip or 0; 0 … D
 * @param approachMm approach at feed, 0 or more
 * @param overrunMm travel beyond the end diameter, 0 or more (tube 0.2–0.5 mm, from memory)
 * @param feedMmPerRev normal feed, above 0
 * @param reducedFeedMmPerRev feed below the reduction diameter, above 0
 * @param reducedBelowDiameterMm reduction diameter; 0 … D, at or below the end diameter: only the
 *     overrun is reduced
 */
public record CutOff(
    double outerDiameterMm,
    double endDiameterMm,
    double approachMm,
    double overrunMm,
    double feedMmPerRev,
    double reducedFeedMmPerRev,
    double reducedBelowDiameterMm) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public CutOff {
    Require.positive("outerDiameterMm", outerDiameterMm);
    Require.between("endDiameterMm", endDiameterMm, 0, outerDiameterMm);
    Require.notNegative("approachMm", approachMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("reducedFeedMmPerRev", reducedFeedMmPerRev);
    Require.between("reducedBelowDiameterMm", reducedBelowDiameterMm, 0, outerDiameterMm);
  }

  /** Revolutions that the cut takes, whatever the speed. */
  public double revolutionsCount() {
    double normalMm = approachMm + (outerDiameterMm - changeDiameterMm()) / 2;
    double reducedMm = (changeDiameterMm() - endDiameterMm) / 2 + overrunMm;
    return normalMm / feedMmPerRev + reducedMm / reducedFeedMmPerRev;
  }

  /**
   * Time at constant spindle speed.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }

  /**
   * Time at constant surface speed; approach and overrun at the speeds of the two end diameters.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double outer = outerDiameterMm / 2;
    double change = changeDiameterMm() / 2;
    double end = endDiameterMm / 2;
    double approachS = 60 * approachMm / (feedMmPerRev * speed.revPerMin(outer));
    double overrunS = 60 * overrunMm / (reducedFeedMmPerRev * speed.revPerMin(end));
    return approachS
        + radialS(outer, change, feedMmPerRev, speed)
        + radialS(change, end, reducedFeedMmPerRev, speed)
        + overrunS;
  }

  private static double radialS(
      double fromMm, double toMm, double feedMmPerRev, SurfaceSpeed speed) {
    return fromMm == toMm ? 0 : new SurfaceSpeedFacing(fromMm, toMm, feedMmPerRev).timeS(speed);
  }

  private double changeDiameterMm() {
    return Math.max(endDiameterMm, reducedBelowDiameterMm);
  }
}
