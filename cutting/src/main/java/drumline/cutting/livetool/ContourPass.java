package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * Engraving, chamfering an edge, or deburring along a path with a live tool.
 *
 * <p>t = th + 60·path/vf + strokes·tp (s), tp the time to plunge, lift and jump to the next stroke.
 *
 * <p>Source: [BASIS] 2.7, derived; engraving 200–800 mm/min at 0.1–0.3 mm depth from memory.
 *
 * @param pathMm length of all strokes, above 0
 * @param strokesCount strokes between which the tool lifts, at least 1
 * @param plungeS time tp for each stroke, 0 or more
 * @param holdS time th to orient, clamp and unclamp the spindle, 0 or more
 */
public record ContourPass(double pathMm, int strokesCount, double plungeS, double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ContourPass {
    Require.positive("pathMm", pathMm);
    Require.atLeast("strokesCount", strokesCount, 1);
    Require.notNegative("plungeS", plungeS);
    Require.notNegative("holdS", holdS);
  }

  /** The edge of a round hole, once around. */
  public static ContourPass aroundHole(double diameterMm, double plungeS, double holdS) {
    Require.positive("diameterMm", diameterMm);
    return new ContourPass(Math.PI * diameterMm, 1, plungeS, holdS);
  }

  /**
   * Time of the path.
   *
   * @param feedMmPerMin feed vf along the path, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double timeS(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    return holdS + 60 * pathMm / feedMmPerMin + strokesCount * plungeS;
  }
}
