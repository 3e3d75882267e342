package drumline.bench.route;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.PlanningProblem;

/**
 * A planning run on the clock.
 *
 * @param cycleMs cycle found
 * @param gapPct share of the cycle above the bound
 * @param isProven whether it is proven the best
 * @param tookS time it took
 */
record Planning(int cycleMs, double gapPct, boolean isProven, double tookS) {

  /**
   * Plans with two workers.
   *
   * @throws IllegalStateException if no layout was found, or the audit finds a breach
   */
  static Planning run(PlanningProblem problem, double searchS, int seed) {
    long start = System.nanoTime();
    PlanningResult result =
        Planner.plan(
            problem,
            new PlannerSettings(searchS, 2, seed),
            ProgressListener.silent(),
            Cancel.never());
    double tookS = (System.nanoTime() - start) / 1e9;
    if (result instanceof PlanningResult.Planned planned && planned.audit().isPassed()) {
      return new Planning(
          planned.cycleMs(), 100 * planned.gapRatio(), planned.isProvenOptimal(), tookS);
    }
    throw new IllegalStateException("no sound layout: " + result);
  }
}
