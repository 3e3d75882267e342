package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * A pattern of holes off centre in the face, drilled one after the other with the spindle held.
 *
 * <p>t = th + count·ts + (count − 1)·(tr + max(0, ti − tr)) + tr; the spindle indexes (ti) while
 * the drill is out, so the longer of retract-and-return tr and ti counts.
 *
 * <p>Source: [BASIS] 2.7, derived.
 *
 * @param holesCount holes, at least 1
 * @param strokeS time ts of one drilling stroke, above 0, from {@code DrillPass}
 * @param returnS time tr to retract and come back at rapid, 0 or more
 * @param indexS time ti to the next angle, with clamping, 0 or more
 * @param holdS time th to orient, clamp and unclamp the spindle, 0 or more
 */
public record FaceHoles(
    int holesCount, double strokeS, double returnS, double indexS, double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public FaceHoles {
    Require.atLeast("holesCount", holesCount, 1);
    Require.positive("strokeS", strokeS);
    Require.notNegative("returnS", returnS);
    Require.notNegative("indexS", indexS);
    Require.notNegative("holdS", holdS);
  }

  /** Time of the whole pattern. */
  public double timeS() {
    double betweenS = Math.max(returnS, indexS);
    return holdS + holesCount * strokeS + (holesCount - 1) * betweenS + returnS;
  }
}
