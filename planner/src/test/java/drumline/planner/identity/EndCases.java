package drumline.planner.identity;

import static drumline.planner.identity.RuleCases.at;
import static drumline.planner.identity.RuleCases.problem;

import drumline.planner.model.CutOff;
import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cut-off B, pick-up and cycle. */
final class EndCases {
  private EndCases() {}

  static List<RuleCase> all() {
    return List.of(
        cutOff("not in the last position", List.of(), at("1a", 0, "2b", 0), at("1a", 0, "1b", 20)),
        cutOff("still in cut", List.of(), at("2a", 0, "2b", 10), at("2a", 0, "2b", 9)),
        cutOff("after the cut-off", List.of(), at("2a", 0, "2b", 10), at("2a", 20, "2b", 0)),
        cutOff("ends later", List.of("A"), at("2a", 5, "2b", 5), at("2a", 6, "2b", 5)),
        grip(),
        roundTrip(),
        backMode(),
        cycle("index", 90, at("1a", 0, "1b", 0), at("1a", 1, "1b", 0), Optional.empty()),
        cycle(
            "bar feed",
            80,
            at("1a", 0, "2b", 3),
            at("1a", 0, "2b", 4),
            Optional.of(new CutOff("B", 7, List.of()))));
  }

  private static RuleCase cutOff(
      String what, List<String> overlapping, Layout kept, Layout broken) {
    PlanningProblem problem =
        problem(Mode.any(10), Mode.any(10))
            .withEnd(Optional.of(new CutOff("B", 0, overlapping)), Optional.empty());
    return new RuleCase("cut-off", what, problem, kept, broken);
  }

  private static PlanningProblem pickUp(int gripMs) {
    PlanningProblem plain = problem(Mode.any(10), Mode.any(10));
    List<Slide> slides = new ArrayList<>(plain.slides());
    slides.add(new Slide("back", 3, 2, 0));
    Task a = plain.tasks().get(0).withSlideIds(List.of("1a", "back"));
    PickUp pickUp = new PickUp(gripMs, 20, 20, 20, 1, SpindleRules.instant());
    return new PlanningProblem(
        2,
        slides,
        List.of(a, plain.tasks().get(1)),
        List.of(),
        List.of(),
        SpindleRules.instant(),
        0,
        Optional.of(new CutOff("B", 0, List.of())),
        Optional.of(pickUp),
        List.of());
  }

  private static RuleCase grip() {
    return new RuleCase(
        "pick-up",
        "cut-off before the grip",
        pickUp(5),
        at("1a", 0, "2b", 5),
        at("1a", 0, "2b", 4));
  }

  /** 5 + 10 + 20 + 25 + 20 + 20 = 100. */
  private static RuleCase roundTrip() {
    return new RuleCase(
        "pick-up",
        "round trip of 101 in a cycle of 100",
        pickUp(5),
        at("back", 15, "2b", 5),
        at("back", 16, "2b", 5));
  }

  private static RuleCase backMode() {
    PlanningProblem problem = pickUp(0);
    Task drumOnly = problem.tasks().get(0).withModes(List.of(Mode.any(10).withEnd(Mode.End.DRUM)));
    return new RuleCase(
        "slide-and-mode",
        "a drum mode on a back slide",
        problem.withTasks(List.of(drumOnly, problem.tasks().get(1))),
        at("1a", 0, "2b", 0),
        at("back", 0, "2b", 0));
  }

  private static RuleCase cycle(
      String what, int indexMs, Layout kept, Layout broken, Optional<CutOff> cutOff) {
    PlanningProblem problem =
        problem(Mode.any(10), Mode.any(10)).withIndexMs(indexMs).withEnd(cutOff, Optional.empty());
    return new RuleCase("cycle", what, problem, kept, broken);
  }
}
