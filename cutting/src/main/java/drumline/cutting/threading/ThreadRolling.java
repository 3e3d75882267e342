package drumline.cutting.threading;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Thread rolling from the side: radial heads by work revolutions, tangential heads by their travel;
 * axial heads are a {@link DieHeadPass}.
 *
 * <p>Radial: t = 60·Nw/n. Tangential: t = 60·s/(f·n), s the travel from contact to the centre line.
 *
 * <p>Source: [BASIS] 2.6; Nw 10–30, 30–60 m/min in steel and 60–90 in brass, elongation at least 7
 * % and strength up to 1400 N/mm² are from memory. No chips: the blank is near the pitch diameter
 * ([MH31] p. 2187).
 */
public final class ThreadRolling {
  private ThreadRolling() {}

  /**
   * Time of a radial head.
   *
   * @param workRevolutionsCount revolutions Nw of the work under the rolls, above 0
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double radialS(double workRevolutionsCount, double speedRevPerMin) {
    Require.positive("workRevolutionsCount", workRevolutionsCount);
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * workRevolutionsCount / speedRevPerMin;
  }

  /**
   * Time of a tangential head, from the approach to the centre line.
   *
   * @param travelMm travel s with approach, above 0
   * @param feedMmPerRev feed f for each revolution of the work, above 0
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double tangentialS(double travelMm, double feedMmPerRev, double speedRevPerMin) {
    Require.positive("travelMm", travelMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * travelMm / (feedMmPerRev * speedRevPerMin);
  }

  /**
   * Travel of two tangential rolls from first contact to the centre line: s = √((R + r)² − (R + r −
   * a)²), R roll radius, r blank radius, a depth rolled in from one side.
   *
   * @param rollDiameterMm diameter of a roll, above 0
   * @param blankDiameterMm diameter of the blank, above 0
   * @param depthMm depth a, above 0 to the blank's radius
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double tangentialTravelMm(
      double rollDiameterMm, double blankDiameterMm, double depthMm) {
    Require.positive("rollDiameterMm", rollDiameterMm);
    Require.positive("blankDiameterMm", blankDiameterMm);
    Require.positive("depthMm", depthMm);
    Require.between("depthMm", depthMm, 0, blankDiameterMm / 2);
    double contact = (rollDiameterMm + blankDiameterMm) / 2;
    double full = contact - depthMm;
    return Math.sqrt(contact * contact - full * full);
  }

  /**
   * Whether the material flows well enough to be rolled.
   *
   * @param elongationPct elongation after fracture, above 0
   * @param strengthMpa tensile strength, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static Validity material(double elongationPct, double strengthMpa) {
    Require.positive("elongationPct", elongationPct);
    Require.positive("strengthMpa", strengthMpa);
    return Validity.of("elongation", elongationPct, 7, 100, "%", "the thread may flake")
        .and(Validity.of("strength", strengthMpa, 0, 1400, "N/mm²", "the rolls may break"));
  }
}
