package drumline.app.replan;

import drumline.app.study.NoLayout;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.TranslationResult;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.List;

/**
 * A route planned on a machine, cycle only.
 *
 * @param cycleS cycle with the index; 0 where there is no layout
 * @param boundS no layout can have a shorter cycle
 * @param isProven whether the cycle is proven the shortest
 * @param obstacles why there is no layout; empty where there is one
 */
public record QuickPlan(double cycleS, double boundS, boolean isProven, List<Problem> obstacles) {

  /** Copies the list. */
  public QuickPlan {
    obstacles = List.copyOf(obstacles);
  }

  /** Plans with pins of the user's and others. */
  public static QuickPlan of(
      Inquiry inquiry,
      Machine machine,
      Route route,
      List<Pin> pins,
      PlannerSettings settings,
      Cancel cancel) {
    TranslationResult translated =
        RouteTranslator.translate(route, machine, inquiry.part(), inquiry.bar(), pins);
    if (translated.translation().isEmpty()) {
      return new QuickPlan(0, 0, false, translated.problems());
    }
    PlanningResult result =
        Planner.plan(
            translated.translation().orElseThrow().problem(),
            settings,
            ProgressListener.silent(),
            cancel);
    return result instanceof PlanningResult.Planned planned
        ? new QuickPlan(
            planned.cycleMs() / 1000.0,
            planned.lowerBoundMs() / 1000.0,
            planned.isProvenOptimal(),
            List.of())
        : new QuickPlan(0, 0, false, List.of(NoLayout.of(machine, result)));
  }

  /** Whether a layout was found. */
  public boolean isFeasible() {
    return cycleS > 0;
  }
}
