package drumline.route.cut;

import drumline.cutting.finish.FeedMarkRoughness;
import drumline.route.draft.ToolChoice;

/** Feed that leaves the roughness asked for, never outside the window. */
final class FinishFeed {
  /** What real cutting adds to the ideal profile; 1.2 to 2 by [BASIS] section 5, from memory. */
  private static final double PRACTICE_RATIO = 1.5;

  private FinishFeed() {}

  static double feedMmPerRev(ToolChoice choice, double roughnessRaUm) {
    double radius = choice.tool().family().noseRadiusMm();
    double high = choice.window().feedHigh();
    if (radius <= 0 || roughnessRaUm <= 0) {
      return high;
    }
    double wanted = new FeedMarkRoughness(radius, PRACTICE_RATIO).feedMmPerRev(roughnessRaUm);
    return Math.max(choice.window().feedLow(), Math.min(high, wanted));
  }
}
