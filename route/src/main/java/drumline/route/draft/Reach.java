package drumline.route.draft;

import drumline.shop.problem.Problem;
import java.util.Locale;

/** Whether a tool stands as far out as its cut asks for. */
public final class Reach {
  private Reach() {}

  /**
   * Notes a warning where the reach over the tool's size is beyond its family's ratio.
   *
   * @param reachMm how far the tool must stand out, at least
   * @param sizeMm diameter, or width of a blade
   * @param hint what might help, beginning with "Maybe"
   */
  public static void check(
      RouteDraft draft, ToolChoice choice, double reachMm, double sizeMm, String hint) {
    double limit = choice.tool().family().lengthRatio();
    if (reachMm / sizeMm <= limit + 1e-9) {
      return;
    }
    draft.problem(
        Problem.warning(
            "tool-reach",
            choice.featureId(),
            String.format(
                Locale.ROOT, "%.1f mm deep, %.1f times its size", reachMm, reachMm / sizeMm),
            String.format(Locale.ROOT, "%.1f times for %s", limit, choice.tool().label()),
            hint));
  }
}
