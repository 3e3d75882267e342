package drumline.cutting.drive;

import drumline.cutting.validity.Require;

/**
 * Torque and power at a live tool behind its motor's gearing.
 *
 * <p>nt = i·nm; Mt = Mm(nt/i)/i·η; highest speed is the less of i·nmax and the tool holder's limit.
 *
 * <p>Source: gearing; the holder's limits are its maker's and go before these.
 *
 * @param motor curve of the motor
 * @param speedRatio i, tool speed to motor speed, above 0
 * @param efficiencyRatio η, above 0 to 1
 * @param holderRevPerMin highest speed of the tool holder, above 0
 * @param holderTorqueNm highest torque of the tool holder, above 0
 */
public record LiveToolCurve(
    SpindleCurve motor,
    double speedRatio,
    double efficiencyRatio,
    double holderRevPerMin,
    double holderTorqueNm) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public LiveToolCurve {
    Require.positive("speedRatio", speedRatio);
    Require.inside("efficiencyRatio", efficiencyRatio, 0, Math.nextUp(1.0));
    Require.positive("holderRevPerMin", holderRevPerMin);
    Require.positive("holderTorqueNm", holderTorqueNm);
  }

  /** Highest tool speed. */
  public double maxRevPerMin() {
    return Math.min(holderRevPerMin, speedRatio * motor.maxSpeedRevPerMin());
  }

  /**
   * Torque available at the tool: the less of motor and holder.
   *
   * @param toolRevPerMin tool speed nt, 0 … highest tool speed
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double torqueNm(double toolRevPerMin) {
    Require.between("toolRevPerMin", toolRevPerMin, 0, maxRevPerMin());
    double ofMotorNm = motor.torqueNm(toolRevPerMin / speedRatio) / speedRatio;
    return Math.min(holderTorqueNm, efficiencyRatio * ofMotorNm);
  }

  /**
   * Power available at the tool.
   *
   * @param toolRevPerMin tool speed nt, 0 … highest tool speed
   * @throws IllegalArgumentException if the speed is outside its range
   */
  public double powerKw(double toolRevPerMin) {
    return Math.PI * torqueNm(toolRevPerMin) * toolRevPerMin / 30000;
  }
}
