package drumline.planner.identity;

import static drumline.planner.identity.RuleCases.at;
import static drumline.planner.identity.RuleCases.problem;

import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.SpindleRules;
import java.util.List;

/** What the spindle can do at one moment and how fast it changes. */
final class SpindleCases {
  private static final Mode AT_1000 = Mode.turning(1000, 10);
  private static final Mode AT_2000 = Mode.turning(2000, 10);
  private static final Mode HELD = Mode.held(10);
  private static final Layout TOGETHER = at("1a", 0, "1b", 0);
  private static final Layout ONE_BY_ONE = at("1a", 0, "1b", 10);

  private SpindleCases() {}

  static List<RuleCase> all() {
    return List.of(
        condition("two speeds", problem(AT_1000, AT_2000)),
        condition("turning and held", problem(AT_1000, HELD)),
        condition("held and held", problem(HELD, HELD)),
        condition("any and held", problem(Mode.any(10), HELD)),
        condition("C axis and any", problem(Mode.cAxis(10), Mode.any(10))),
        condition("exclusive and the same speed", problem(exclusive(), AT_1000)),
        condition(
            "held at two angles",
            heldTogether(HELD.withHoldAngle("flat"), HELD.withHoldAngle("hole"))),
        new RuleCase(
            "spindle-condition",
            "held at one angle, which may work together, against a C axis",
            heldTogether(HELD.withHoldAngle("flat"), Mode.cAxis(10)),
            ONE_BY_ONE,
            TOGETHER),
        // 1000 rev/min of change at 200000 rev/min per second: 5 ms
        change("speed", problem(AT_1000, AT_2000), 200_000, 0, 15),
        // rounded up: 1000 / 300000 s = 3.33 ms
        change("speed, rounded up", problem(AT_1000, AT_2000), 300_000, 0, 14),
        change("stop and orient", problem(AT_1000, HELD), 200_000, 3, 18),
        change("start from the hold", problem(HELD, AT_1000), 200_000, 3, 15),
        first("run-up beyond the index", AT_1000, 1),
        first("from top speed to hold", HELD, 9),
        commonSpeed(),
        load("spindle-load", 600, 401, 0, 0),
        load("grip-load", 0, 0, 600, 401));
  }

  private static Mode exclusive() {
    return new Mode(SpindleCondition.EXCLUSIVE_TURNING, 1000, 10, 0, 0, Mode.End.EITHER, "");
  }

  private static PlanningProblem heldTogether(Mode a, Mode b) {
    return problem(a, b)
        .withSpindle(
            new SpindleRules(
                0,
                0,
                0,
                SpindleRules.Drive.INDEPENDENT,
                SpindleRules.HeldWork.SAME_ANGLE_TOGETHER));
  }

  private static RuleCase condition(String what, PlanningProblem problem) {
    return new RuleCase("spindle-condition", what, problem, ONE_BY_ONE, TOGETHER);
  }

  private static SpindleRules rules(int runUpRevPerMinPerS, int orientMs, int topRevPerMin) {
    return new SpindleRules(
        runUpRevPerMinPerS,
        orientMs,
        topRevPerMin,
        SpindleRules.Drive.INDEPENDENT,
        SpindleRules.HeldWork.ALONE);
  }

  private static RuleCase change(
      String what, PlanningProblem problem, int runUp, int orientMs, int secondStartMs) {
    // the index hides the first run-up
    PlanningProblem changing = problem.withSpindle(rules(runUp, orientMs, 0)).withIndexMs(20);
    return new RuleCase(
        "condition-change",
        what,
        changing,
        at("1a", 0, "1b", secondStartMs),
        at("1a", 0, "1b", secondStartMs - 1));
  }

  /**
   * Top speed 2000 at 200000 rev/min per second, index 4 ms: 5 ms to reach 1000 from either side,
   * so 1 ms is left; 10 ms from top to a stop and 3 ms to orient, so 9 ms are left.
   */
  private static RuleCase first(String what, Mode mode, int startMs) {
    PlanningProblem problem =
        problem(mode, Mode.any(10)).withSpindle(rules(200_000, 3, 2000)).withIndexMs(4);
    return new RuleCase(
        "first-condition",
        what,
        problem,
        at("1a", startMs, "2a", 0),
        at("1a", startMs - 1, "2a", 0));
  }

  private static RuleCase commonSpeed() {
    PlanningProblem problem =
        problem(AT_1000, AT_2000)
            .withSpindle(
                new SpindleRules(
                    0, 0, 0, SpindleRules.Drive.COMMON_SPEED, SpindleRules.HeldWork.ALONE));
    PlanningProblem twoModes =
        problem.withTasks(
            List.of(
                problem.tasks().get(0).withModes(List.of(AT_1000, AT_2000)),
                problem.tasks().get(1)));
    Layout kept =
        new Layout(
            List.of(
                new Layout.Placement("A", "1a", 1, 0, 10),
                new Layout.Placement("B", "2b", 0, 0, 10)),
            RuleCases.CYCLE_MS);
    return new RuleCase(
        "common-speed", "two speeds in the drum", twoModes, kept, at("1a", 0, "2b", 0));
  }

  private static RuleCase load(String check, int spindleA, int spindleB, int gripA, int gripB) {
    PlanningProblem problem =
        problem(AT_1000.withShares(spindleA, gripA), AT_1000.withShares(spindleB, gripB));
    return new RuleCase(check, "1001 of 1000", problem, ONE_BY_ONE, TOGETHER);
  }
}
