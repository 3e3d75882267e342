package drumline.route.cut;

import drumline.cutting.finish.FeedMarkRoughness;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.problem.Problem;
import java.util.Locale;

/** Feed that leaves the roughness asked for. */
final class FinishFeed {
  private FinishFeed() {}

  /** The feed; it is said where even the window's least feed leaves the surface too rough. */
  static double feedMmPerRev(RouteDraft draft, ToolChoice choice, double roughnessRaUm) {
    double radius = choice.tool().family().noseRadiusMm();
    double high = choice.window().feedHigh();
    if (radius <= 0 || roughnessRaUm <= 0) {
      return high;
    }
    FeedMarkRoughness marks = new FeedMarkRoughness(radius, draft.allowance("roughnessPractice"));
    double wanted = marks.feedMmPerRev(roughnessRaUm);
    double low = choice.window().feedLow();
    if (wanted >= low) {
      return Math.min(high, wanted);
    }
    draft.problem(
        Problem.warning(
            "finish-roughness",
            choice.featureId(),
            String.format(Locale.ROOT, "Ra %.2f µm asks for %.3f mm/rev", roughnessRaUm, wanted),
            String.format(Locale.ROOT, "%.3f mm/rev and more with %s", low, choice.tool().label()),
            "Maybe take a larger nose radius or a wiper edge, or burnish the surface."));
    return low;
  }
}
