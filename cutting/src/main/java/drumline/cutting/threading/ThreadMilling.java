package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Thread milled by a full-profile cutter in one helical turn around the work, or in several turns
 * by a single-profile cutter.
 *
 * <p>t = 60·π·D·(turns + entry)/vf + th; vf along the contour; feed of the cutter's centre: inside
 * vf·(D − d)/D, outside vf·(D + d)/D; C axis speed vf/(π·D).
 *
 * <p>Source: kinematics, derived; entry and exit arcs of a quarter turn each are common practice.
 *
 * @param diameterMm diameter D of the thread on which the feed counts, above 0
 * @param cutterDiameterMm cutter diameter d, above 0
 * @param turnsCount turns in cut, at least 1
 * @param entryTurnsRatio turns for entry and exit together, 0 or more (0.5)
 * @param holdS time th to orient, clamp and unclamp, or to couple the C axis, 0 or more
 */
public record ThreadMilling(
    double diameterMm,
    double cutterDiameterMm,
    double turnsCount,
    double entryTurnsRatio,
    double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ThreadMilling {
    Require.positive("diameterMm", diameterMm);
    Require.positive("cutterDiameterMm", cutterDiameterMm);
    Require.between("turnsCount", turnsCount, 1, 1000);
    Require.notNegative("entryTurnsRatio", entryTurnsRatio);
    Require.notNegative("holdS", holdS);
  }

  /**
   * Time of the thread.
   *
   * @param feedMmPerMin contour feed vf = fz·z·n, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double timeS(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    return holdS + 60 * Math.PI * diameterMm * (turnsCount + entryTurnsRatio) / feedMmPerMin;
  }

  /**
   * Feed of the cutter's centre for an inside thread.
   *
   * @param feedMmPerMin contour feed vf, above 0
   * @throws IllegalArgumentException if the feed is not above 0 or the cutter is not smaller than
   *     the thread
   */
  public double insideCentreMmPerMin(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    Require.positive("diameterMm - cutterDiameterMm", diameterMm - cutterDiameterMm);
    return feedMmPerMin * (diameterMm - cutterDiameterMm) / diameterMm;
  }

  /**
   * Feed of the cutter's centre for an outside thread.
   *
   * @param feedMmPerMin contour feed vf, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double outsideCentreMmPerMin(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    return feedMmPerMin * (diameterMm + cutterDiameterMm) / diameterMm;
  }

  /**
   * Speed of the C axis when the work turns under a standing cutter.
   *
   * @param feedMmPerMin contour feed vf, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double axisRevPerMin(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    return feedMmPerMin / (Math.PI * diameterMm);
  }
}
