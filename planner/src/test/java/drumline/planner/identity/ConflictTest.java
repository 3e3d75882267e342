package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Problems without an answer name the rules that cannot hold together, and no others. */
class ConflictTest {
  private static List<String> conflicts(PlanningProblem problem) {
    PlanningResult result =
        Planner.plan(
            problem, new PlannerSettings(2, 1, 1), ProgressListener.silent(), Cancel.never());
    assertThat(result).isInstanceOf(PlanningResult.Infeasible.class);
    assertThat(((PlanningResult.Infeasible) result).notes()).isEmpty();
    return ((PlanningResult.Infeasible) result).conflicts();
  }

  private static PlanningProblem plain() {
    return RuleCases.problem(Mode.turning(1000, 10), Mode.turning(2000, 10));
  }

  @Test
  void pinsAgainstOrder() {
    PlanningProblem problem =
        plain()
            .withPrecedences(
                List.of(
                    new Precedence(
                        "A", "B", Precedence.Sharing.ANY_SLIDE, 0, "finish after rough")))
            .withPins(List.of(new Pin.ToPosition("A", 2), new Pin.ToPosition("B", 1)));
    assertThat(conflicts(problem))
        .containsExactlyInAnyOrder(
            "B comes after A (finish after rough)",
            "A is pinned to position 2",
            "B is pinned to position 1");
  }

  @Test
  void circle() {
    PlanningProblem problem =
        plain().withPrecedences(List.of(Precedence.of("A", "B"), Precedence.of("B", "A")));
    assertThat(conflicts(problem)).containsExactlyInAnyOrder("B comes after A", "A comes after B");
  }

  @Test
  void shareAndNotShare() {
    PlanningProblem problem =
        plain()
            .withPairRules(
                List.of(
                    new PairRule(PairRule.Kind.MUST_SHARE, "A", "B", "runout"),
                    new PairRule(PairRule.Kind.MUST_NOT_SHARE, "A", "B", ""),
                    new PairRule(PairRule.Kind.MUST_NOT_OVERLAP, "A", "B", "")));
    assertThat(conflicts(problem))
        .containsExactlyInAnyOrder(
            "A and B must be in one position (runout)", "A and B must not be in one position");
  }

  @Test
  void commonSpeed() {
    PlanningProblem problem =
        plain()
            .withSpindle(
                new SpindleRules(
                    0, 0, 0, SpindleRules.Drive.COMMON_SPEED, SpindleRules.HeldWork.ALONE));
    assertThat(conflicts(problem)).containsExactly("all positions turn at one common speed");
  }

  @Test
  void noSlideAndTooMuchLoad() {
    PlanningProblem plain = plain();
    Task nowhere = new Task("A", "cross hole", List.of(), List.of(Mode.held(10)));
    assertThat(conflicts(plain.withTasks(List.of(nowhere, plain.tasks().get(1)))))
        .containsExactly("A (cross hole) has no slide that can do it");
    Task heavy =
        plain.tasks().get(0).withModes(List.of(Mode.turning(1000, 10).withShares(1001, 0)));
    assertThat(conflicts(plain.withTasks(List.of(heavy, plain.tasks().get(1)))))
        .containsExactly("A loads the spindle or collet above 1000 ‰ in some modes");
  }

  @Test
  void tooFewSeatsAreCounted() {
    PlanningProblem plain = plain();
    List<Slide> slides =
        plain.slides().stream().map(s -> new Slide(s.id(), s.position(), 0, 0)).toList();
    List<Slide> one = new ArrayList<>(slides);
    one.set(0, new Slide("1a", 1, 1, 0));
    assertThat(conflicts(plain.withSlides(one)))
        .containsExactly("too few tool seats: 2 tools for 1 seats on 1a, 1b, 2a, 2b");
  }

  @Test
  void equipmentLimitAgainstPins() {
    PlanningProblem problem =
        plain()
            .withEquipment(
                new EquipmentRules(
                    List.of(
                        new EquipmentRules.Option("live tool", "1a", List.of("A"), 5),
                        new EquipmentRules.Option("live tool", "2a", List.of("B"), 5)),
                    Map.of("live tool", 1)))
            .withPins(List.of(new Pin.ToSlide("A", "1a"), new Pin.ToSlide("B", "2a")));
    assertThat(conflicts(problem))
        .containsExactlyInAnyOrder(
            "the machine takes live tool on 1 slides at most",
            "A is pinned to slide 1a",
            "B is pinned to slide 2a");
  }

  @Test
  void notHereAgainstTheOnlyPlace() {
    PlanningProblem plain = plain();
    Task only = new Task("A", "", List.of("1a"), List.of(Mode.turning(1000, 10)));
    assertThat(
            conflicts(
                plain
                    .withTasks(List.of(only, plain.tasks().get(1)))
                    .withPins(List.of(new Pin.NotInPosition("A", 1)))))
        .containsExactlyInAnyOrder(
            "A can only be done on slides 1a", "A must not be in position 1");
  }
}
