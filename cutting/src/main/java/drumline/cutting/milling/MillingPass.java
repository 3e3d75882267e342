package drumline.cutting.milling;

import drumline.cutting.validity.Require;

/**
 * One straight pass of a milling cutter.
 *
 * <p>vf = fz·z·n (mm/min); t = 60·(la + l + lo)/vf (s).
 *
 * <p>Source: [SHARMA] Sharma, Production Engineering, 11th edition, problem 4.17.
 *
 * @param lengthMm length l of the milled face, above 0
 * @param runInMm run-in la, 0 or more, see {@link CutterRunIn}
 * @param overrunMm overrun lo, 0 or more
 * @param feedPerToothMm feed fz, above 0
 * @param teethCount teeth z, at least 1
 */
public record MillingPass(
    double lengthMm, double runInMm, double overrunMm, double feedPerToothMm, int teethCount) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public MillingPass {
    Require.positive("lengthMm", lengthMm);
    Require.notNegative("runInMm", runInMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedPerToothMm", feedPerToothMm);
    Require.atLeast("teethCount", teethCount, 1);
  }

  /**
   * Feed of the slide.
   *
   * @param toolRevPerMin speed of the cutter, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double feedMmPerMin(double toolRevPerMin) {
    Require.positive("toolRevPerMin", toolRevPerMin);
    return feedPerToothMm * teethCount * toolRevPerMin;
  }

  /**
   * Time of the pass.
   *
   * @param toolRevPerMin speed of the cutter, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double toolRevPerMin) {
    return 60 * (runInMm + lengthMm + overrunMm) / feedMmPerMin(toolRevPerMin);
  }
}
