package drumline.cutting.slotting;

import drumline.cutting.validity.Require;

/**
 * Peak force of a broach whose teeth cut together, and its stroke.
 *
 * <p>teeth in cut = ⌈L/p⌉; F = F1·teeth; t = 0.06·s/v (s), s in mm, v in m/min.
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problem 4.19; rise 0.02–0.15 mm for each
 * tooth [MAD].
 */
public final class BroachPull {
  private BroachPull() {}

  /**
   * Teeth in cut together.
   *
   * @param lengthMm length L of the cut, above 0
   * @param pitchMm pitch p of the teeth, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static int teethCount(double lengthMm, double pitchMm) {
    Require.positive("lengthMm", lengthMm);
    Require.positive("pitchMm", pitchMm);
    return (int) Math.ceil(lengthMm / pitchMm - 1e-9);
  }

  /**
   * Peak force.
   *
   * @param toothForceN force F1 of one tooth, above 0
   * @param teethCount teeth in cut together, at least 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double peakN(double toothForceN, int teethCount) {
    Require.positive("toothForceN", toothForceN);
    Require.atLeast("teethCount", teethCount, 1);
    return toothForceN * teethCount;
  }

  /**
   * Time of the stroke.
   *
   * @param strokeMm stroke s, above 0
   * @param cutMPerMin cutting speed v, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double strokeS(double strokeMm, double cutMPerMin) {
    Require.positive("strokeMm", strokeMm);
    Require.positive("cutMPerMin", cutMPerMin);
    return 0.06 * strokeMm / cutMPerMin;
  }
}
