package drumline.planner.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import drumline.planner.balance.Balancer;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published line balancing optima, by the balancer and as a plain case of the planner. */
class LineBalancingTest {
  static Stream<PublishedLines.Line> lines() {
    return PublishedLines.all().stream();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void balancerReachesThePublishedCycle(PublishedLines.Line line) {
    BalanceResult result = Balancer.balance(line.problem(), 5, () -> false);
    assertThat(result.cycleMs()).isEqualTo(line.cycle());
    assertThat(result.isProvenOptimal()).isTrue();
    SharingCheck.check(line.problem(), result);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void plannerReachesThePublishedCycle(PublishedLines.Line line) {
    List<Slide> slides = new ArrayList<>();
    for (int p = 1; p <= line.problem().stationCount(); p++) {
      slides.add(new Slide("slide " + p, p, line.problem().tasks().size(), 0));
    }
    List<String> all = slides.stream().map(Slide::id).toList();
    List<Task> tasks = new ArrayList<>();
    List<Precedence> precedences = new ArrayList<>();
    for (BalanceTask task : line.problem().tasks()) {
      tasks.add(new Task(task.id(), "", all, List.of(Mode.any(task.durationMs()))));
      task.predecessorIds().forEach(b -> precedences.add(Precedence.of(b, task.id())));
    }
    PlanningProblem problem =
        PlanningProblem.of(line.problem().stationCount(), slides, tasks)
            .withPrecedences(precedences);
    PlanningResult result =
        Planner.plan(
            problem, new PlannerSettings(10, 2, 1), ProgressListener.silent(), Cancel.never());
    assertThat(result)
        .isInstanceOfSatisfying(
            PlanningResult.Planned.class,
            planned -> {
              assertThat(planned.cycleMs()).isEqualTo(line.cycle());
              assertThat(planned.isProvenOptimal()).isTrue();
              assertThat(planned.audit().broken()).isEmpty();
            });
  }

  @Test
  void dataAreRetypedRight() {
    for (String line : PublishedLines.lines("line-balancing.txt")) {
      if (line.startsWith("graph")) {
        List<String> words = List.of(line.split(" "));
        List<BalanceTask> tasks =
            PublishedLines.all().stream()
                .filter(l -> l.name().equals(words.get(1)))
                .findFirst()
                .orElseThrow()
                .problem()
                .tasks();
        assertThat(tasks).hasSize(Integer.parseInt(words.get(2)));
        assertThat(tasks.stream().mapToInt(BalanceTask::durationMs).sum())
            .as(words.get(1))
            .isEqualTo(Integer.parseInt(words.get(3)));
      }
    }
  }
}
