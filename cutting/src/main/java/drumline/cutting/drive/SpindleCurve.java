package drumline.cutting.drive;

import drumline.cutting.validity.Require;

/**
 * Torque and power of a spindle over its speed: constant torque up to the base speed, constant
 * power up to the drop speed, then power falling in inverse proportion to speed.
 *
 * <p>M = 30000·P/(π·nb) for n ≤ nb; P = Pr for nb ≤ n ≤ nd; P = Pr·nd/n for nd ≤ n ≤ nmax.
 *
 * <p>Source: usual characteristic of field-weakened spindle motors, from memory; the figures are
 * the machine maker's, and his limits go before these.
 *
 * @param ratedPowerKw rated power Pr at the spindle nose, above 0
 * @param baseSpeedRevPerMin base speed nb, above 0
 * @param dropSpeedRevPerMin speed nd at which power begins to fall, nb … nmax
 * @param maxSpeedRevPerMin highest speed nmax, at least nd
 */
public record SpindleCurve(
    double ratedPowerKw,
    double baseSpeedRevPerMin,
    double dropSpeedRevPerMin,
    double maxSpeedRevPerMin) {
  /**
   * @throws IllegalArgumentException if a value is not above 0 or the speeds are not in order
   */
  public SpindleCurve {
    Require.positive("ratedPowerKw", ratedPowerKw);
    Require.positive("baseSpeedRevPerMin", baseSpeedRevPerMin);
    Require.positive("maxSpeedRevPerMin", maxSpeedRevPerMin);
    Require.between(
        "dropSpeedRevPerMin", dropSpeedRevPerMin, baseSpeedRevPerMin, maxSpeedRevPerMin);
  }

  /** A curve whose power does not fall before the highest speed. */
  public static SpindleCurve withoutDrop(
      double ratedPowerKw, double baseSpeedRevPerMin, double maxSpeedRevPerMin) {
    return new SpindleCurve(ratedPowerKw, baseSpeedRevPerMin, maxSpeedRevPerMin, maxSpeedRevPerMin);
  }

  /** Torque available from standstill to base speed. */
  public double ratedTorqueNm() {
    return 30000 * ratedPowerKw / (Math.PI * baseSpeedRevPerMin);
  }

  /**
   * Power available at a speed.
   *
   * @param speedRevPerMin speed n, 0 … highest speed
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double powerKw(double speedRevPerMin) {
    Require.between("speedRevPerMin", speedRevPerMin, 0, maxSpeedRevPerMin);
    if (speedRevPerMin < baseSpeedRevPerMin) {
      return ratedPowerKw * speedRevPerMin / baseSpeedRevPerMin;
    }
    if (speedRevPerMin <= dropSpeedRevPerMin) {
      return ratedPowerKw;
    }
    return ratedPowerKw * dropSpeedRevPerMin / speedRevPerMin;
  }

  /**
   * Torque available at a speed.
   *
   * @param speedRevPerMin speed n, 0 … highest speed
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double torqueNm(double speedRevPerMin) {
    if (speedRevPerMin < baseSpeedRevPerMin) {
      Require.between("speedRevPerMin", speedRevPerMin, 0, maxSpeedRevPerMin);
      return ratedTorqueNm();
    }
    return 30000 * powerKw(speedRevPerMin) / (Math.PI * speedRevPerMin);
  }

  /**
   * Share of the available torque that a cut takes; above 1 the spindle stalls.
   *
   * @param torqueNm torque of the cut, 0 or more
   * @param speedRevPerMin speed n, 0 … highest speed
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double useRatio(double torqueNm, double speedRevPerMin) {
    Require.notNegative("torqueNm", torqueNm);
    return torqueNm / torqueNm(speedRevPerMin);
  }
}
