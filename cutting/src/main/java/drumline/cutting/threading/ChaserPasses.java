package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Passes of an insert with several teeth behind each other, of which each takes its share of depth.
 *
 * <p>passes = ⌈N/teeth⌉; the run-out grows by (teeth − 1)·P.
 *
 * <p>Source: geometry; the division of depth is the insert maker's.
 */
public final class ChaserPasses {
  private ChaserPasses() {}

  /**
   * Passes of the insert.
   *
   * @param singlePassesCount passes N of a single point, at least 1
   * @param teethCount teeth, at least 1
   * @throws IllegalArgumentException if a count is below 1
   */
  public static int passesCount(int singlePassesCount, int teethCount) {
    Require.atLeast("singlePassesCount", singlePassesCount, 1);
    Require.atLeast("teethCount", teethCount, 1);
    return (singlePassesCount + teethCount - 1) / teethCount;
  }

  /**
   * Run-out that the following teeth need beyond that of the first.
   *
   * @param pitchMm pitch P, above 0
   * @param teethCount teeth, at least 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double furtherRunOutMm(double pitchMm, int teethCount) {
    Require.positive("pitchMm", pitchMm);
    Require.atLeast("teethCount", teethCount, 1);
    return (teethCount - 1) * pitchMm;
  }
}
