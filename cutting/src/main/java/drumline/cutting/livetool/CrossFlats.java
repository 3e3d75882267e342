package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * Flats milled with a Y axis and the spindle held at an angle for each.
 *
 * <p>t = th + count·passes·60·(w + la + lo)/vf + (count − 1)·ti + (count·passes − 1)·tr (s).
 *
 * <p>Source: [BASIS] 2.7, derived; times to orient and clamp of 0.2–0.5 s are from memory.
 *
 * @param flatsCount flats, at least 1
 * @param passesCount passes for each flat, at least 1
 * @param widthMm width w across which the cutter travels, above 0
 * @param runMm run-in and overrun la + lo together, 0 or more
 * @param indexS time ti from one angle to the next, with clamping, 0 or more
 * @param returnS time tr to lift and go back to the start of a pass, 0 or more
 * @param holdS time th to orient, clamp and unclamp the spindle, 0 or more
 */
public record CrossFlats(
    int flatsCount,
    int passesCount,
    double widthMm,
    double runMm,
    double indexS,
    double returnS,
    double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public CrossFlats {
    Require.atLeast("flatsCount", flatsCount, 1);
    Require.atLeast("passesCount", passesCount, 1);
    Require.positive("widthMm", widthMm);
    Require.notNegative("runMm", runMm);
    Require.notNegative("indexS", indexS);
    Require.notNegative("returnS", returnS);
    Require.notNegative("holdS", holdS);
  }

  /**
   * Time of all flats.
   *
   * @param feedMmPerMin feed vf of the slide, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double timeS(double feedMmPerMin) {
    Require.positive("feedMmPerMin", feedMmPerMin);
    int passes = flatsCount * passesCount;
    double cutS = 60 * passes * (widthMm + runMm) / feedMmPerMin;
    return holdS + cutS + (flatsCount - 1) * indexS + (passes - 1) * returnS;
  }
}
