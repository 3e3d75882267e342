package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * Polygon turning: a cutter parallel to the spindle turns twice as fast as the work, both the same
 * way in the machine's frame; each insert makes two flats.
 *
 * <p>An insert's path on the work is an ellipse with half axes b = s/2 (e − rt) and a = s/2 + 2·rt
 * (e + rt); crown of a flat = b − b·√(1 − (w/(2a))²); vc at mid-flat = 2π·n·a/1000; t = 60·(l +
 * lo)/(f·n).
 *
 * <p>Source: [PROB] for ratio and number of inserts; ellipse, crown and speed derived, [BASIS] 2.7.
 * Pages disagree about the sense of rotation ([BASIS] 13.6): the ellipse holds only for the same
 * sense; the control's sign must be proven on the machine.
 *
 * @param acrossFlatsMm distance s of opposite flats, above 0
 * @param flatsCount flats, even, at least 2
 * @param tipRadiusMm radius rt of the insert tips about the cutter's axis, above 0
 */
public record PolygonTurning(double acrossFlatsMm, int flatsCount, double tipRadiusMm) {
  /**
   * @throws IllegalArgumentException if a value is outside its range or the number of flats is odd
   */
  public PolygonTurning {
    Require.positive("acrossFlatsMm", acrossFlatsMm);
    Require.atLeast("flatsCount", flatsCount, 2);
    if (flatsCount % 2 != 0) {
      throw new IllegalArgumentException(
          "flatsCount is " + flatsCount + "; allowed is an even number of at least 2.");
    }
    Require.positive("tipRadiusMm", tipRadiusMm);
  }

  /** Inserts on the cutter. */
  public int insertsCount() {
    return flatsCount / 2;
  }

  /** Distance e of the two axes at full depth. */
  public double axesDistanceMm() {
    return acrossFlatsMm / 2 + tipRadiusMm;
  }

  /** Cutter speed to a work speed: 2. */
  public double toolRevPerMin(double workRevPerMin) {
    Require.positive("workRevPerMin", workRevPerMin);
    return 2 * workRevPerMin;
  }

  /**
   * Height of the crown on a flat.
   *
   * @param flatWidthMm width w of the flat, above 0 to twice the longer half axis
   * @throws IllegalArgumentException if the width is outside its range
   */
  public double crownUm(double flatWidthMm) {
    Require.positive("flatWidthMm", flatWidthMm);
    Require.between("flatWidthMm", flatWidthMm, 0, 2 * longHalfAxisMm());
    double share = flatWidthMm / (2 * longHalfAxisMm());
    double shortHalfAxis = acrossFlatsMm / 2;
    return 1000 * (shortHalfAxis - shortHalfAxis * Math.sqrt(1 - share * share));
  }

  /**
   * Cutting speed at mid-flat.
   *
   * @param workRevPerMin speed n of the work, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double cuttingMPerMin(double workRevPerMin) {
    Require.positive("workRevPerMin", workRevPerMin);
    return 2 * Math.PI * workRevPerMin * longHalfAxisMm() / 1000;
  }

  /**
   * Work speed that a cutting speed allows.
   *
   * @param speedMPerMin cutting speed, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double workRevPerMin(double speedMPerMin) {
    Require.positive("speedMPerMin", speedMPerMin);
    return 1000 * speedMPerMin / (2 * Math.PI * longHalfAxisMm());
  }

  /**
   * Time with axial feed.
   *
   * @param travelMm length of the flats with run-in and overrun, above 0
   * @param feedMmPerRev feed f for each revolution of the work, above 0
   * @param workRevPerMin speed n of the work, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double timeS(double travelMm, double feedMmPerRev, double workRevPerMin) {
    Require.positive("travelMm", travelMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("workRevPerMin", workRevPerMin);
    return 60 * travelMm / (feedMmPerRev * workRevPerMin);
  }

  private double longHalfAxisMm() {
    return acrossFlatsMm / 2 + 2 * tipRadiusMm;
  }
}
