package drumline.cutting.livetool;

import drumline.cutting.drilling.DrillPoint;
import drumline.cutting.validity.Require;

/**
 * A hole drilled from the side through the axis, with the spindle held.
 *
 * <p>The tip touches at R. Through both walls: travel = la + R + √(R² − (d/2)²) + A + lo; through
 * one wall into a bore of radius r: la + R − √(r² − (d/2)²) + A + lo; blind, depth l to the full
 * diameter measured from the crown: la + l + A. t = 60·travel/(f·n) + th.
 *
 * <p>Source: [BASIS] 2.7, derived; time to orient and clamp 0.2–0.5 s from memory.
 *
 * @param diameterMm diameter 2R of the work where the hole enters, above 0
 * @param drillDiameterMm diameter d, above 0 to below 2R
 * @param pointAngleDeg point angle σ, above 0 to 180
 * @param approachMm approach la at feed, 0 or more
 * @param overrunMm overrun lo, 0 or more
 * @param feedMmPerRev feed f for each revolution of the tool, above 0
 * @param holdS time th to orient, clamp and unclamp the spindle, 0 or more
 */
public record CrossHole(
    double diameterMm,
    double drillDiameterMm,
    double pointAngleDeg,
    double approachMm,
    double overrunMm,
    double feedMmPerRev,
    double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public CrossHole {
    Require.positive("diameterMm", diameterMm);
    Require.inside("drillDiameterMm", drillDiameterMm, 0, diameterMm);
    Require.positive("pointAngleDeg", pointAngleDeg);
    Require.between("pointAngleDeg", pointAngleDeg, 0, 180);
    Require.notNegative("approachMm", approachMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.notNegative("holdS", holdS);
  }

  /** Depth from the crown at which the full diameter has entered: R − √(R² − (d/2)²). */
  public double entrySagMm() {
    return diameterMm / 2 - halfChordMm(diameterMm);
  }

  /** Travel through both walls. */
  public double throughTravelMm() {
    return approachMm + diameterMm / 2 + halfChordMm(diameterMm) + pointMm() + overrunMm;
  }

  /**
   * Travel through one wall into a bore.
   *
   * @param boreDiameterMm diameter 2r of the bore, at least the drill's and below 2R
   * @throws IllegalArgumentException if the bore is outside its range
   */
  public double intoBoreTravelMm(double boreDiameterMm) {
    Require.between("boreDiameterMm", boreDiameterMm, drillDiameterMm, diameterMm);
    return approachMm + diameterMm / 2 - halfChordMm(boreDiameterMm) + pointMm() + overrunMm;
  }

  /**
   * Travel of a blind hole.
   *
   * @param depthMm depth from the crown to the end of the full diameter, above 0
   * @throws IllegalArgumentException if the depth is not above 0
   */
  public double blindTravelMm(double depthMm) {
    Require.positive("depthMm", depthMm);
    return approachMm + depthMm + pointMm();
  }

  /**
   * Time of the hole with holding.
   *
   * @param travelMm travel, from one of the methods here, above 0
   * @param toolRevPerMin speed n of the tool, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double timeS(double travelMm, double toolRevPerMin) {
    Require.positive("travelMm", travelMm);
    Require.positive("toolRevPerMin", toolRevPerMin);
    return holdS + 60 * travelMm / (feedMmPerRev * toolRevPerMin);
  }

  private double pointMm() {
    return DrillPoint.lengthMm(drillDiameterMm, pointAngleDeg);
  }

  private double halfChordMm(double ofDiameterMm) {
    return Math.sqrt(ofDiameterMm * ofDiameterMm - drillDiameterMm * drillDiameterMm) / 2;
  }
}
