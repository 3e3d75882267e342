package drumline.route.cut;

import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.problem.Problem;
import java.util.Locale;

/** Speed of driven tools. */
final class DrivenTool {
  private DrivenTool() {}

  /** Speed at the window's upper cutting speed, no faster than a driven tool turns; said if so. */
  static double revPerMin(RouteDraft draft, ToolChoice choice, double diameterMm) {
    double wanted = SpeedWindow.revPerMin(choice.window().speedHighMPerMin(), diameterMm);
    double top = draft.allowance("liveToolTop");
    if (wanted <= top) {
      return wanted;
    }
    draft.problem(
        Problem.warning(
            "driven-tool-speed",
            choice.featureId(),
            String.format(
                Locale.ROOT,
                "%s: %.0f rev/min for %.0f m/min",
                choice.tool().label(),
                wanted,
                choice.window().speedHighMPerMin()),
            String.format(Locale.ROOT, "driven tools turn at %.0f rev/min at most", top),
            "Maybe fit a faster drive if this tool governs the cycle."));
    return top;
  }
}
