package drumline.planner.identity;

import drumline.planner.model.CutOff;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Random routes of eighteen tasks on six positions; the same seed gives the same route. */
final class MiddlingRoutes {
  private MiddlingRoutes() {}

  static PlanningProblem of(int seed) {
    Random random = new Random(seed);
    List<Slide> slides = new ArrayList<>();
    for (int p = 1; p <= 6; p++) {
      slides.add(new Slide("cross " + p, p, 3, 200));
      slides.add(new Slide("end " + p, p, 3, 200));
    }
    List<Task> tasks = new ArrayList<>();
    List<Precedence> order = new ArrayList<>();
    for (int i = 0; i < 18; i++) {
      String kind = random.nextInt(5) < 3 ? "cross" : "end";
      List<String> slideIds =
          slides.stream().map(Slide::id).filter(s -> s.startsWith(kind)).toList();
      if (i == 17) {
        slideIds = List.of("cross 6");
      }
      tasks.add(new Task("t" + i, "", slideIds, modes(random)));
      for (int j = 0; j < i; j++) {
        if (random.nextInt(8) == 0) {
          order.add(Precedence.of("t" + j, "t" + i));
        }
      }
    }
    return PlanningProblem.of(6, slides, tasks)
        .withPrecedences(order)
        .withIndexMs(900)
        .withSpindle(
            new SpindleRules(
                5000, 150, 4000, SpindleRules.Drive.INDEPENDENT, SpindleRules.HeldWork.ALONE))
        .withEnd(Optional.of(new CutOff("t17", 400, List.of())), Optional.empty());
  }

  private static List<Mode> modes(Random random) {
    int work = 900 + random.nextInt(4000);
    if (random.nextInt(4) == 0) {
      return List.of(Mode.held(work));
    }
    int slowest = random.nextInt(4);
    List<Mode> modes = new ArrayList<>();
    for (int s = slowest; s < slowest + 3; s++) {
      int speed = 1000 + 500 * s;
      modes.add(Mode.turning(speed, work * (1000 + 500 * (slowest + 2)) / speed));
    }
    return modes;
  }
}
