package drumline.planner.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ten operations on cross and end slides, against exhaustive enumeration. */
class SlideAwareLineTest {
  static Stream<String> answers() {
    return PublishedLines.lines("slide-aware-line.txt").stream()
        .filter(l -> l.startsWith("answer"));
  }

  @ParameterizedTest
  @MethodSource("answers")
  void plannerReachesTheEnumeratedCycle(String answer) {
    List<String> words = List.of(answer.split(" "));
    Precedence.Sharing sharing = Precedence.Sharing.valueOf(words.get(1));
    int expected = Integer.parseInt(words.get(3));
    PlanningResult result =
        Planner.plan(
            problem(sharing, Integer.parseInt(words.get(2)), words.subList(4, words.size())),
            new PlannerSettings(10, 2, 1),
            ProgressListener.silent(),
            Cancel.never());
    if (expected == 0) {
      assertThat(result).isInstanceOf(PlanningResult.Infeasible.class);
      return;
    }
    PlanningResult.Planned planned = (PlanningResult.Planned) result;
    assertThat(planned.cycleMs()).isEqualTo(expected);
    assertThat(planned.isProvenOptimal()).isTrue();
    assertThat(planned.audit().broken()).isEmpty();
  }

  private static PlanningProblem problem(
      Precedence.Sharing sharing, int positionCount, List<String> apart) {
    List<Slide> slides = new ArrayList<>();
    for (int p = 1; p <= positionCount; p++) {
      slides.add(new Slide("C" + p, p, 10, 0));
      slides.add(new Slide("E" + p, p, 10, 0));
    }
    List<Task> tasks = new ArrayList<>();
    List<Precedence> order = new ArrayList<>();
    for (String line : PublishedLines.lines("slide-aware-line.txt")) {
      List<String> words = List.of(line.split(" "));
      if (words.get(0).equals("op")) {
        String id = words.get(1);
        boolean last = id.equals("J");
        List<String> slideIds =
            slides.stream()
                .filter(s -> s.id().startsWith(words.get(2)))
                .filter(s -> !last || s.position() == positionCount)
                .map(Slide::id)
                .toList();
        int time = Integer.parseInt(words.get(3));
        tasks.add(new Task(id, "", slideIds, List.of(Mode.any(time))));
        words
            .subList(4, words.size())
            .forEach(b -> order.add(Precedence.of(b, id).withSharing(sharing)));
      }
    }
    List<PairRule> pairs =
        apart.stream()
            .map(
                p ->
                    new PairRule(
                        PairRule.Kind.MUST_NOT_SHARE, p.substring(0, 1), p.substring(1), ""))
            .toList();
    return PlanningProblem.of(positionCount, slides, tasks)
        .withPrecedences(order)
        .withPairRules(pairs);
  }
}
