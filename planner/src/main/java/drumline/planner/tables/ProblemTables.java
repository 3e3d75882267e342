package drumline.planner.tables;

import drumline.planner.model.CutOff;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.SpindleRules;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A planning problem as arrays. Tasks and slides are counted in the problem's order from 0; stages
 * are positions counted from 0, the back-working one last. Pins and overloaded modes have already
 * taken their choices away.
 */
public final class ProblemTables {
  /** What was asked. */
  public final PlanningProblem problem;

  /** Number of tasks. */
  public final int taskCount;

  /** Positions of the drum. */
  public final int drumCount;

  /** Positions of the drum, and the back-working one if there is a pick-up spindle. */
  public final int stageCount;

  /** By slide: its stage. */
  public final int[] stageOfSlide;

  /** By task, slide and mode: true if the task can run there so. */
  public final boolean[][][] allowed;

  /** By task: slides with an allowed mode. */
  public final int[][] slidesOf;

  /** By task: modes with an allowed slide. */
  public final int[][] modesOf;

  /** Order rules. */
  public final Arc[] arcs;

  /** By task and task: true if the first must be finished before the second begins. */
  public final boolean[][] precedes;

  /** By task: earliest and latest stage left by slides and order. */
  public final StageWindow[] windows;

  /** The cut-off's task, −1 if there is none. */
  public final int cutTask;

  /** By task: true if it may be in cut during the cut-off. */
  public final boolean[] overlapsCut;

  private final SpindleRules[] spindleOfStage;

  /**
   * An order rule.
   *
   * @param before task that comes first
   * @param after task that follows
   * @param sharing whether they may share a position
   * @param lagMs pause between them in one position
   */
  public record Arc(int before, int after, Precedence.Sharing sharing, int lagMs) {}

  /**
   * Stages a task can stand in.
   *
   * @param first earliest
   * @param last latest; less than first if there is none
   */
  public record StageWindow(int first, int last) {
    /** True if the stage is in the window. */
    public boolean holds(int stage) {
      return first <= stage && stage <= last;
    }
  }

  private final Map<String, Integer> taskIndex = new HashMap<>();
  private final Map<String, Integer> slideIndex = new HashMap<>();

  /** Tables of a problem. */
  public ProblemTables(PlanningProblem problem) {
    this.problem = problem;
    taskCount = problem.tasks().size();
    drumCount = problem.positionCount();
    stageCount = drumCount + (problem.pickUp().isPresent() ? 1 : 0);
    for (int i = 0; i < taskCount; i++) {
      taskIndex.put(problem.tasks().get(i).id(), i);
    }
    for (int s = 0; s < problem.slides().size(); s++) {
      slideIndex.put(problem.slides().get(s).id(), s);
    }
    stageOfSlide = problem.slides().stream().mapToInt(s -> s.position() - 1).toArray();
    spindleOfStage = new SpindleRules[stageCount];
    for (int k = 0; k < stageCount; k++) {
      spindleOfStage[k] =
          k < drumCount ? problem.spindle() : problem.pickUp().orElseThrow().spindle();
    }
    cutTask = problem.cutOff().map(c -> task(c.taskId())).orElse(-1);
    overlapsCut = new boolean[taskCount];
    List<String> overlapping = problem.cutOff().map(CutOff::overlapTaskIds).orElse(List.of());
    overlapping.forEach(id -> overlapsCut[task(id)] = true);
    arcs =
        problem.precedences().stream()
            .map(p -> new Arc(task(p.beforeId()), task(p.afterId()), p.sharing(), p.lagMs()))
            .toArray(Arc[]::new);
    Choices choices = new Choices(this);
    allowed = choices.allowed();
    slidesOf = choices.slidesOf();
    modesOf = choices.modesOf();
    precedes = OrderClosure.of(taskCount, arcs);
    windows = StageWindows.of(this);
  }

  /** Index of a task. */
  public int task(String id) {
    return java.util.Objects.requireNonNull(taskIndex.get(id), id);
  }

  /** Index of a slide. */
  public int slide(String id) {
    return java.util.Objects.requireNonNull(slideIndex.get(id), id);
  }

  /** Number of slides. */
  public int slideCount() {
    return stageOfSlide.length;
  }

  /** A mode of a task. */
  public Mode mode(int task, int mode) {
    return problem.tasks().get(task).modes().get(mode);
  }

  /** Spindle rules of a stage. */
  public SpindleRules spindle(int stage) {
    return spindleOfStage[stage];
  }

  /** Seats of a slide. */
  public int seatCount(int slide) {
    return problem.slides().get(slide).seatCount();
  }

  /** Tool shift of a slide, in ms. */
  public int shiftMs(int slide) {
    return problem.slides().get(slide).toolShiftMs();
  }

  /** True if all turning tasks of the drum share one speed. */
  public boolean isCommonSpeed() {
    return problem.spindle().drive() == SpindleRules.Drive.COMMON_SPEED;
  }

  /** Earliest start in a stage in a mode: what its run-up needs beyond the index, in ms. */
  public int releaseMs(int stage, Mode mode) {
    int hiddenMs =
        stage < drumCount ? problem.indexMs() : problem.pickUp().map(PickUp::retractMs).orElse(0);
    return Math.max(0, spindleOfStage[stage].reachMs(mode) - hiddenMs);
  }

  /** Time before the cut-off in which the pick-up spindle comes and grips, in ms. */
  public int gripMs() {
    return problem.pickUp().map(PickUp::gripMs).orElse(0);
  }

  /** Bar feed after the cut-off, in ms. */
  public int barFeedMs() {
    return problem.cutOff().map(CutOff::barFeedMs).orElse(0);
  }

  /** Shortest time of a task over its allowed modes, in ms; 0 if it has none. */
  public int shortestMs(int task) {
    int shortest = Integer.MAX_VALUE;
    for (int m : modesOf[task]) {
      shortest = Math.min(shortest, mode(task, m).durationMs());
    }
    return shortest == Integer.MAX_VALUE ? 0 : shortest;
  }

  /** True if a task has a place left in a stage. */
  public boolean canStand(int task, int stage) {
    if (!windows[task].holds(stage)) {
      return false;
    }
    for (int s : slidesOf[task]) {
      if (stageOfSlide[s] == stage) {
        return true;
      }
    }
    return false;
  }

  /** Pair rules of one kind as task indexes. */
  public List<int[]> pairs(PairRule.Kind kind) {
    return problem.pairRules().stream()
        .filter(r -> r.kind() == kind)
        .map(r -> new int[] {task(r.firstId()), task(r.secondId())})
        .toList();
  }

  /**
   * A cycle in which any choice of places and modes can be done one task after the other, in ms.
   */
  public int horizonMs() {
    long sum = problem.indexMs() + (long) gripMs() + barFeedMs();
    long longestRelease = 0;
    for (int i = 0; i < taskCount; i++) {
      long longest = 0;
      for (int m : modesOf[i]) {
        Mode mode = mode(i, m);
        longest = Math.max(longest, mode.durationMs());
        for (SpindleRules spindle : spindleOfStage) {
          longestRelease = Math.max(longestRelease, spindle.reachMs(mode));
        }
      }
      sum += longest + longestRelease;
    }
    for (int s = 0; s < slideCount(); s++) {
      sum += (long) shiftMs(s) * taskCount;
    }
    for (Arc arc : arcs) {
      sum += arc.lagMs();
    }
    return Math.toIntExact(sum + longestRelease + problem.pickUp().map(PickUp::carryMs).orElse(0));
  }
}
