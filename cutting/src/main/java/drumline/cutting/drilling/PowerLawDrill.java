package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Third opinion on drilling: torque and thrust of high-speed-steel drills by power laws.
 *
 * <p>M = C1·D^1.9·f^0.8 (kgf·mm), T = C2·D·f^q (kgf), turned into N·m and N with 9.80665.
 *
 * <p>Source: exponents [EXPM]; constants from memory: steel of about 735 N/mm² 33.8, 84.7, q 0.7;
 * grey iron of 190 HB 23.3, 60.5, q 0.8.
 */
public enum PowerLawDrill {
  /** Steel of about 735 N/mm². */
  STEEL(33.8, 84.7, 0.7),
  /** Grey iron of 190 HB. */
  GREY_IRON(23.3, 60.5, 0.8);

  private static final double NEWTONS = 9.80665;

  private final double torqueRatio;
  private final double thrustRatio;
  private final double feedPowerRatio;

  PowerLawDrill(double torqueRatio, double thrustRatio, double feedPowerRatio) {
    this.torqueRatio = torqueRatio;
    this.thrustRatio = thrustRatio;
    this.feedPowerRatio = feedPowerRatio;
  }

  /**
   * Torque M.
   *
   * @param diameterMm diameter D, above 0
   * @param feedMmPerRev feed f, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double torqueNm(double diameterMm, double feedMmPerRev) {
    Require.positive("diameterMm", diameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    return torqueRatio * Math.pow(diameterMm, 1.9) * Math.pow(feedMmPerRev, 0.8) * NEWTONS / 1000;
  }

  /**
   * Thrust T.
   *
   * @param diameterMm diameter D, above 0
   * @param feedMmPerRev feed f, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double thrustN(double diameterMm, double feedMmPerRev) {
    Require.positive("diameterMm", diameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    return thrustRatio * diameterMm * Math.pow(feedMmPerRev, feedPowerRatio) * NEWTONS;
  }
}
