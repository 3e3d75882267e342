package drumline.bench.route;

import drumline.planner.model.CutOff;
import drumline.planner.model.Mode;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Routes as they come in practice, drawn at random: chains of turning from the side, chains of hole
 * making from the end, cross work on the held spindle, back-working, one cut-off. The same seed
 * gives the same route. The shares and times are usual ones, from memory.
 */
public final class GeneratedRoutes {
  private static final int[] SPEEDS = {900, 1200, 1600, 2100, 2800, 3700, 4900, 6500};
  private static final SpindleRules SPINDLES =
      new SpindleRules(
          9000, 250, 8000, SpindleRules.Drive.INDEPENDENT, SpindleRules.HeldWork.ALONE);

  private final Random random;
  private final int positionCount;
  private final int operationCount;
  private final List<Slide> slides = new ArrayList<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Precedence> orders = new ArrayList<>();

  private GeneratedRoutes(int operationCount, int positionCount, int seed) {
    this.operationCount = operationCount;
    this.positionCount = positionCount;
    random = new Random(31L * seed + 1009L * operationCount + positionCount);
  }

  /**
   * A route.
   *
   * @param operationCount operations with the cut-off, 10 or more
   * @param positionCount positions of the drum, 4 or more
   */
  public static PlanningProblem of(int operationCount, int positionCount, int seed) {
    return new GeneratedRoutes(operationCount, positionCount, seed).problem();
  }

  private PlanningProblem problem() {
    addSlides();
    int backCount = operationCount / 8;
    int crossCount = operationCount / 6;
    int endCount = operationCount * 3 / 10;
    int sideCount = operationCount - backCount - crossCount - endCount - 1;
    List<String> firsts = new ArrayList<>();
    addChains("turn", sideCount, 4, ids("cross", "live"), firsts);
    addChains("hole", endCount, 5, ids("end"), firsts);
    addHeld(crossCount, firsts);
    addBack(backCount);
    tasks.add(new Task("cut-off", "", List.of("cut-off"), turning(1400 + random.nextInt(1500))));
    return new PlanningProblem(
        positionCount,
        slides,
        tasks,
        orders,
        List.of(),
        SPINDLES,
        650,
        Optional.of(new CutOff("cut-off", 800, List.of())),
        Optional.of(new PickUp(450, 450, 350, 450, 1, SPINDLES)),
        List.of());
  }

  private void addSlides() {
    int seats = Math.max(3, (int) Math.ceil(0.9 * operationCount / positionCount));
    for (int p = 1; p < positionCount; p++) {
      slides.add(new Slide("cross-" + p, p, seats, 350));
      slides.add(new Slide("end-" + p, p, seats, 350));
      if (p % 2 == 0) {
        slides.add(new Slide("live-" + p, p, seats, 400));
      }
    }
    slides.add(new Slide("cross-" + positionCount, positionCount, seats, 350));
    slides.add(new Slide("cut-off", positionCount, 1, 0));
    slides.add(new Slide("back", positionCount + 1, Math.max(5, operationCount / 6), 450));
  }

  private List<String> ids(String... kinds) {
    List<String> kindList = List.of(kinds);
    return slides.stream()
        .map(Slide::id)
        .filter(id -> kindList.stream().anyMatch(kind -> id.startsWith(kind + "-")))
        .toList();
  }

  private void addChains(
      String name, int count, int longestCount, List<String> where, List<String> firsts) {
    String before = "";
    int left = 0;
    for (int i = 0; i < count; i++) {
      String id = name + "-" + i;
      int work = 500 + random.nextInt(random.nextInt(4) == 0 ? 6000 : 2500);
      tasks.add(new Task(id, "", where, turning(work)));
      if (left == 0) {
        left = 1 + random.nextInt(longestCount);
        firsts.add(id);
      } else {
        orders.add(Precedence.of(before, id));
      }
      before = id;
      left--;
    }
  }

  /** Cross work: on slides with live tools, each after some turning. */
  private void addHeld(int count, List<String> firsts) {
    for (int i = 0; i < count; i++) {
      String id = "cross-work-" + i;
      Mode mode =
          random.nextInt(4) == 0
              ? Mode.cAxis(900 + random.nextInt(2500))
              : Mode.held(600 + random.nextInt(2200));
      tasks.add(new Task(id, "", ids("live"), List.of(mode)));
      orders.add(Precedence.of(firsts.get(random.nextInt(firsts.size())), id));
    }
  }

  private void addBack(int count) {
    for (int i = 0; i < count; i++) {
      tasks.add(new Task("back-" + i, "", List.of("back"), turning(400 + random.nextInt(900))));
      if (i > 0 && random.nextBoolean()) {
        orders.add(Precedence.of("back-" + (i - 1), "back-" + i));
      }
    }
  }

  /** A window of two to four speeds; the time at the fastest one is given. */
  private List<Mode> turning(int shortestMs) {
    int top = 2 + random.nextInt(SPEEDS.length - 2);
    int low = Math.max(0, top - 1 - random.nextInt(3));
    int load = 100 + random.nextInt(450);
    int fixedMs = 250;
    List<Mode> modes = new ArrayList<>();
    for (int s = low; s <= top; s++) {
      int cut = (int) Math.ceil((double) shortestMs * SPEEDS[top] / SPEEDS[s]);
      modes.add(Mode.turning(SPEEDS[s], fixedMs + cut).withShares(load, load * 2 / 3));
    }
    return modes;
  }
}
