package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.CutOff;
import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * More room never lengthens the shortest cycle, less never shortens it, and times k-fold make a
 * cycle k-fold. The number of seeds in each block is the system property {@code drumline.seeds}.
 */
class MonotonyTest {
  private static final int SEEDS_EACH = Integer.getInteger("drumline.seeds", 8);
  private static final int FACTOR = 3;

  private static OptionalInt shortest(PlanningProblem problem) {
    PlanningResult result =
        Planner.plan(
            problem, new PlannerSettings(5, 1, 1), ProgressListener.silent(), Cancel.never());
    if (result instanceof PlanningResult.Planned planned) {
      assertThat(planned.isProvenOptimal()).isTrue();
      assertThat(planned.audit().broken()).isEmpty();
      return OptionalInt.of(planned.cycleMs());
    }
    assertThat(result).isInstanceOf(PlanningResult.Infeasible.class);
    return OptionalInt.empty();
  }

  private static void neverLonger(int seed, PlanningProblem narrow, PlanningProblem wide) {
    OptionalInt before = shortest(narrow);
    OptionalInt after = shortest(wide);
    if (before.isPresent()) {
      assertThat(after).as("seed %d", seed).isPresent();
      assertThat(after.getAsInt()).as("seed %d", seed).isLessThanOrEqualTo(before.getAsInt());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void moreSlidesModesAndSeatsNeverLengthen(int block) {
    for (int seed = block * SEEDS_EACH; seed < (block + 1) * SEEDS_EACH; seed++) {
      PlanningProblem problem = SmallProblems.of(1000 + seed);
      List<String> all = problem.slides().stream().map(Slide::id).toList();
      List<Task> everywhere =
          problem.tasks().stream().map(t -> isCut(problem, t) ? t : t.withSlideIds(all)).toList();
      neverLonger(seed, problem, problem.withTasks(everywhere));
      neverLonger(
          seed,
          problem,
          problem.withSlides(
              problem.slides().stream()
                  .map(s -> new Slide(s.id(), s.position(), s.seatCount() + 1, s.toolShiftMs()))
                  .toList()));
      neverLonger(seed, problem, problem.withTasks(withFasterMode(problem.tasks())));
    }
  }

  private static boolean isCut(PlanningProblem problem, Task task) {
    return problem.cutOff().map(c -> c.taskId().equals(task.id())).orElse(false);
  }

  /** A wider window: each task's first mode at another speed as well, a little faster. */
  private static List<Task> withFasterMode(List<Task> tasks) {
    List<Task> wider = new ArrayList<>();
    for (Task task : tasks) {
      List<Mode> modes = new ArrayList<>(task.modes());
      Mode first = modes.get(0);
      int speed = first.revPerMin() == 0 ? 0 : first.revPerMin() + 100;
      modes.add(
          new Mode(
              first.condition(),
              speed,
              Math.max(1, first.durationMs() - 1),
              first.spindleSharePermille(),
              first.gripSharePermille(),
              first.end(),
              first.holdAngle()));
      wider.add(task.withModes(modes));
    }
    return wider;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void fewerRulesNeverLengthen(int block) {
    for (int seed = block * SEEDS_EACH; seed < (block + 1) * SEEDS_EACH; seed++) {
      PlanningProblem problem = SmallProblems.of(2000 + seed);
      neverLonger(seed, problem, problem.withPairRules(List.of()));
      neverLonger(seed, problem, problem.withPins(List.of()));
      EquipmentRules unlimited = new EquipmentRules(problem.equipment().options(), Map.of());
      neverLonger(seed, problem, problem.withEquipment(unlimited));
      if (!problem.precedences().isEmpty()) {
        List<Precedence> fewer = problem.precedences().subList(1, problem.precedences().size());
        neverLonger(seed, problem, problem.withPrecedences(fewer));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void timesManifoldMakeTheCycleManifold(int block) {
    for (int seed = block * SEEDS_EACH; seed < (block + 1) * SEEDS_EACH; seed++) {
      PlanningProblem problem = withoutRunUp(SmallProblems.of(3000 + seed), 1);
      OptionalInt once = shortest(problem);
      OptionalInt manifold = shortest(withoutRunUp(SmallProblems.of(3000 + seed), FACTOR));
      assertThat(manifold.isPresent()).as("seed %d", seed).isEqualTo(once.isPresent());
      if (once.isPresent()) {
        assertThat(manifold.getAsInt()).as("seed %d", seed).isEqualTo(FACTOR * once.getAsInt());
      }
    }
  }

  private static SpindleRules spindle(SpindleRules s, int factor) {
    return new SpindleRules(0, s.orientMs() * factor, s.topRevPerMin(), s.drive(), s.heldWork());
  }

  private static PlanningProblem withoutRunUp(PlanningProblem p, int factor) {
    return new PlanningProblem(
        p.positionCount(),
        p.slides().stream()
            .map(s -> new Slide(s.id(), s.position(), s.seatCount(), s.toolShiftMs() * factor))
            .toList(),
        p.tasks().stream()
            .map(t -> t.withModes(t.modes().stream().map(m -> longer(m, factor)).toList()))
            .toList(),
        p.precedences().stream()
            .map(
                o ->
                    new Precedence(
                        o.beforeId(), o.afterId(), o.sharing(), o.lagMs() * factor, o.reason()))
            .toList(),
        p.pairRules(),
        spindle(p.spindle(), factor),
        p.indexMs() * factor,
        p.cutOff().map(c -> new CutOff(c.taskId(), c.barFeedMs() * factor, c.overlapTaskIds())),
        p.pickUp()
            .map(
                u ->
                    new PickUp(
                        u.gripMs() * factor,
                        u.retractMs() * factor,
                        u.ejectMs() * factor,
                        u.returnMs() * factor,
                        1,
                        spindle(u.spindle(), factor))),
        p.pins(),
        p.equipment());
  }

  private static Mode longer(Mode mode, int factor) {
    return new Mode(
        mode.condition(),
        mode.revPerMin(),
        mode.durationMs() * factor,
        mode.spindleSharePermille(),
        mode.gripSharePermille(),
        mode.end(),
        mode.holdAngle());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void threeRunsAgree(int seed) {
    PlanningProblem problem = MiddlingRoutes.of(seed);
    Layout first = layout(problem, 0.2);
    assertThat(layout(problem, 0.2)).isEqualTo(first);
    assertThat(layout(problem, 0.2)).isEqualTo(first);
  }

  private static Layout layout(PlanningProblem problem, double searchS) {
    return ((PlanningResult.Planned)
            Planner.plan(
                problem,
                new PlannerSettings(searchS, 2, 1),
                ProgressListener.silent(),
                Cancel.never()))
        .layout();
  }
}
