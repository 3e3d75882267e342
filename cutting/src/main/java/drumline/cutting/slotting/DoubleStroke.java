package drumline.cutting.slotting;

import drumline.cutting.validity.Require;

/**
 * Time of one cutting stroke and the return.
 *
 * <p>t = 0.06·s/vc + 0.06·s/vr (s), s in mm, speeds in m/min.
 *
 * <p>Source: [SHARMA] Sharma, Production Engineering, 11th edition, problem 4.16.
 */
public final class DoubleStroke {
  private DoubleStroke() {}

  /**
   * Time there and back.
   *
   * @param strokeMm stroke s, above 0
   * @param cutMPerMin cutting speed vc, above 0
   * @param returnMPerMin return speed vr, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double timeS(double strokeMm, double cutMPerMin, double returnMPerMin) {
    Require.positive("strokeMm", strokeMm);
    Require.positive("cutMPerMin", cutMPerMin);
    Require.positive("returnMPerMin", returnMPerMin);
    return 0.06 * strokeMm * (1 / cutMPerMin + 1 / returnMPerMin);
  }
}
