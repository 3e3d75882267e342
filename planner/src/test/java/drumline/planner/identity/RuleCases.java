package drumline.planner.identity;

import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Two tasks A and B on a drum of two positions with two slides each, one rule at a time. */
final class RuleCases {
  static final int CYCLE_MS = 100;
  static final List<Slide> SLIDES =
      List.of(
          new Slide("1a", 1, 3, 0),
          new Slide("1b", 1, 3, 0),
          new Slide("2a", 2, 3, 0),
          new Slide("2b", 2, 3, 0));
  static final List<String> ALL = List.of("1a", "1b", "2a", "2b");

  private RuleCases() {}

  static Stream<RuleCase> all() {
    return Stream.of(places(), order(), SpindleCases.all(), EndCases.all()).flatMap(List::stream);
  }

  static PlanningProblem problem(Mode a, Mode b) {
    return PlanningProblem.of(
        2, SLIDES, List.of(new Task("A", "", ALL, List.of(a)), new Task("B", "", ALL, List.of(b))));
  }

  /** A and B, each with slide and start; ten ms long. */
  static Layout at(String slideA, int startA, String slideB, int startB) {
    return new Layout(
        List.of(
            new Layout.Placement("A", slideA, 0, startA, startA + 10),
            new Layout.Placement("B", slideB, 0, startB, startB + 10)),
        CYCLE_MS);
  }

  private static List<RuleCase> places() {
    PlanningProblem plain = problem(Mode.any(10), Mode.any(10));
    List<RuleCase> cases = new ArrayList<>();
    Task onlyFirst = new Task("A", "", List.of("1a"), List.of(Mode.any(10)));
    cases.add(
        new RuleCase(
            "slide-and-mode",
            "another slide",
            plain.withTasks(List.of(onlyFirst, plain.tasks().get(1))),
            at("1a", 0, "1b", 0),
            at("2a", 0, "1b", 0)));
    cases.add(
        new RuleCase(
            "slide-and-mode", "longer than its mode", plain, at("1a", 0, "1b", 0), stretched()));
    List<Slide> oneSeat = new ArrayList<>(SLIDES);
    oneSeat.set(0, new Slide("1a", 1, 1, 0));
    cases.add(
        new RuleCase(
            "seats",
            "two tools on one seat",
            plain.withSlides(oneSeat),
            at("1a", 0, "1b", 0),
            at("1a", 0, "1a", 10)));
    cases.add(
        new RuleCase(
            "one-at-a-time",
            "two tasks on a slide at once",
            plain,
            at("1a", 0, "1a", 10),
            at("1a", 0, "1a", 9)));
    List<Slide> shifting = new ArrayList<>(SLIDES);
    shifting.set(0, new Slide("1a", 1, 3, 4));
    cases.add(
        new RuleCase(
            "one-at-a-time",
            "no time to shift tools",
            plain.withSlides(shifting),
            at("1a", 0, "1a", 14),
            at("1a", 0, "1a", 13)));
    cases.add(
        pinned(plain, new Pin.ToPosition("A", 1), at("1b", 0, "1a", 0), at("2a", 0, "1a", 0)));
    cases.add(
        pinned(plain, new Pin.ToSlide("A", "1b"), at("1b", 0, "1a", 0), at("1a", 0, "1b", 0)));
    cases.add(
        pinned(plain, new Pin.NotInPosition("A", 2), at("1b", 0, "1a", 0), at("2a", 0, "1a", 0)));
    cases.add(
        new RuleCase(
            "equipment",
            "two live tools on a machine that takes one",
            plain.withEquipment(
                new EquipmentRules(
                    List.of(
                        new EquipmentRules.Option("live tool", "1a", List.of("A", "B"), 5),
                        new EquipmentRules.Option("live tool", "2a", List.of("A", "B"), 5)),
                    Map.of("live tool", 1))),
            at("1a", 0, "2b", 0),
            at("1a", 0, "2a", 0)));
    PlanningProblem twoModes =
        plain.withTasks(
            List.of(
                plain.tasks().get(0).withModes(List.of(Mode.any(10), Mode.any(10))),
                plain.tasks().get(1)));
    cases.add(pinned(twoModes, new Pin.ToMode("A", 0), at("1a", 0, "1b", 0), secondMode()));
    return cases;
  }

  private static Layout stretched() {
    return new Layout(
        List.of(
            new Layout.Placement("A", "1a", 0, 0, 11), new Layout.Placement("B", "1b", 0, 0, 10)),
        CYCLE_MS);
  }

  private static Layout secondMode() {
    return new Layout(
        List.of(
            new Layout.Placement("A", "1a", 1, 0, 10), new Layout.Placement("B", "1b", 0, 0, 10)),
        CYCLE_MS);
  }

  private static RuleCase pinned(PlanningProblem problem, Pin pin, Layout kept, Layout broken) {
    return new RuleCase("pins", pin.toString(), problem.withPins(List.of(pin)), kept, broken);
  }

  private static List<RuleCase> order() {
    return List.of(
        ordered(Precedence.Sharing.ANY_SLIDE, 0, at("1a", 0, "1b", 10), at("1a", 0, "1b", 9)),
        ordered(Precedence.Sharing.ANY_SLIDE, 0, at("1a", 50, "2b", 0), at("2a", 0, "1b", 50)),
        ordered(Precedence.Sharing.ANY_SLIDE, 3, at("1a", 0, "1b", 13), at("1a", 0, "1b", 12)),
        ordered(Precedence.Sharing.SAME_SLIDE, 0, at("1a", 0, "1a", 10), at("1a", 0, "1b", 10)),
        ordered(Precedence.Sharing.LATER_POSITION, 0, at("1a", 0, "2a", 0), at("1a", 0, "1a", 10)),
        paired(PairRule.Kind.MUST_SHARE, at("1a", 0, "1b", 0), at("1a", 0, "2b", 0)),
        paired(PairRule.Kind.MUST_NOT_SHARE, at("1a", 0, "2b", 0), at("1a", 0, "1b", 10)),
        paired(PairRule.Kind.MUST_NOT_OVERLAP, at("1a", 10, "1b", 0), at("1a", 9, "1b", 0)));
  }

  private static RuleCase ordered(
      Precedence.Sharing sharing, int lagMs, Layout kept, Layout broken) {
    PlanningProblem problem = problem(Mode.any(10), Mode.any(10));
    Precedence rule = new Precedence("A", "B", sharing, lagMs, "");
    return new RuleCase(
        "precedence", rule.toString(), problem.withPrecedences(List.of(rule)), kept, broken);
  }

  private static RuleCase paired(PairRule.Kind kind, Layout kept, Layout broken) {
    PlanningProblem problem = problem(Mode.any(10), Mode.any(10));
    PairRule rule = new PairRule(kind, "A", "B", "");
    return new RuleCase("pairs", kind.name(), problem.withPairRules(List.of(rule)), kept, broken);
  }
}
