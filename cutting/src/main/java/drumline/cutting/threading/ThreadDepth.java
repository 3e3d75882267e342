package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Depth to which a thread of 60° is cut.
 *
 * <p>H = (√3/2)·P; outside 17/24·H = 0.6134·P (root with radius H/6), inside 5/8·H = 0.5413·P.
 *
 * <p>Source: [ISO-68-1] basic profile of 60° threads; factor 17/24 for the rounded root from
 * memory.
 */
public final class ThreadDepth {
  private static final double HEIGHT = Math.sqrt(3) / 2;

  private ThreadDepth() {}

  /**
   * Depth of an outside thread.
   *
   * @param pitchMm pitch P, above 0
   * @throws IllegalArgumentException if the pitch is not above 0
   */
  public static double outsideMm(double pitchMm) {
    Require.positive("pitchMm", pitchMm);
    return 17.0 / 24 * HEIGHT * pitchMm;
  }

  /**
   * Depth of an inside thread.
   *
   * @param pitchMm pitch P, above 0
   * @throws IllegalArgumentException if the pitch is not above 0
   */
  public static double insideMm(double pitchMm) {
    Require.positive("pitchMm", pitchMm);
    return 5.0 / 8 * HEIGHT * pitchMm;
  }
}
