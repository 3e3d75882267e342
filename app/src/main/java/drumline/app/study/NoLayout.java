package drumline.app.study;

import drumline.planner.api.PlanningResult;
import drumline.shop.machine.Machine;
import drumline.shop.problem.Problem;
import java.util.List;

/** Says why no layout was found: the rules that cannot hold together, at most a few in one line. */
public final class NoLayout {
  private static final int MOST_RULES = 5;

  private NoLayout() {}

  /**
   * The problem of a search without a layout.
   *
   * @throws IllegalArgumentException if the result has a layout
   */
  public static Problem of(Machine machine, PlanningResult result) {
    if (result instanceof PlanningResult.Infeasible none) {
      return Problem.error(
          "no-layout",
          machine.name(),
          words(none.conflicts()),
          "a layout that keeps every rule",
          hint(none));
    }
    if (result instanceof PlanningResult.Undecided) {
      return Problem.error(
          "undecided",
          machine.name(),
          "no layout found in the time given, and no proof that there is none",
          "a layout that keeps every rule",
          "Maybe more time with --seconds, or another machine.");
    }
    throw new IllegalArgumentException("result has a layout, allowed: one without");
  }

  /**
   * The rules in conflict as one text: the last ones first, since those are changed most easily.
   */
  public static String words(List<String> conflicts) {
    if (conflicts.size() == 1) {
      return conflicts.get(0);
    }
    int first = Math.max(0, conflicts.size() - MOST_RULES);
    String shown = String.join("; ", conflicts.subList(first, conflicts.size()));
    return first == 0
        ? "these rules cannot all hold: " + shown
        : conflicts.size()
            + " rules that cannot all hold, among them: "
            + shown
            + "; and "
            + first
            + " more";
  }

  private static String hint(PlanningResult.Infeasible none) {
    boolean seats = none.conflicts().stream().anyMatch(c -> c.startsWith("too few tool seats"));
    String way = seats ? "a machine with more tool seats" : "another machine, or one rule less";
    return "Maybe " + way + (none.notes().isEmpty() ? "." : "; " + String.join(" ", none.notes()));
  }
}
