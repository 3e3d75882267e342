package drumline.cutting.drive;

import drumline.cutting.validity.Require;
import java.util.List;

/**
 * Whether a drive that is loaded for part of each cycle stays within its thermal rating.
 *
 * <p>Mrms = √(Σ Mi²·ti/T) ≤ Mr; for one load of duty δ = t/T, M/Mr ≤ 1/√δ, and never above the
 * drive's peak.
 *
 * <p>Source: equivalent torque of intermittent duty (duty types of [IEC-60034-1]), from memory.
 * Copper losses only, so it holds near and below base speed, and for cycles short against the
 * motor's thermal time constant of some minutes. The drive maker's overload figures go before
 * these.
 */
public final class ShortTimeOverload {
  /** A torque that lasts for a time. */
  public record Stretch(double torqueNm, double timeS) {
    /**
     * @throws IllegalArgumentException if a value is negative
     */
    public Stretch {
      Require.notNegative("torqueNm", torqueNm);
      Require.notNegative("timeS", timeS);
    }
  }

  private ShortTimeOverload() {}

  /**
   * Constant torque that would heat the motor as much.
   *
   * @param stretches torques of the cycle; the rest of the cycle is idle
   * @param cycleS cycle time T, at least the sum of the stretches
   * @throws IllegalArgumentException if the cycle is shorter than its stretches
   */
  public static double equivalentNm(List<Stretch> stretches, double cycleS) {
    double busyS = stretches.stream().mapToDouble(Stretch::timeS).sum();
    Require.positive("cycleS", cycleS);
    Require.between("sum of stretches", busyS, 0, cycleS * (1 + 1e-9));
    double heat =
        stretches.stream().mapToDouble(s -> s.torqueNm() * s.torqueNm() * s.timeS()).sum();
    return Math.sqrt(heat / cycleS);
  }

  /**
   * Torque to rated torque that a duty allows, up to the drive's peak.
   *
   * @param dutyRatio duty δ, above 0 to 1
   * @param peakRatio peak torque to rated torque of the drive, at least 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double allowedRatio(double dutyRatio, double peakRatio) {
    Require.inside("dutyRatio", dutyRatio, 0, Math.nextUp(1.0));
    Require.between("peakRatio", peakRatio, 1, 10);
    return Math.min(peakRatio, 1 / Math.sqrt(dutyRatio));
  }
}
