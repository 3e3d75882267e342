package drumline.planner.stage;

import drumline.planner.bound.PairSavings;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.Precedence;
import drumline.planner.model.SpindleRules;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a stage of one kind allows, as arrays. */
final class StageTables {
  final ProblemTables tables;
  final int stage;
  final int slideCount;

  /** By task: ways of doing it here, shortest first; empty if it cannot stand here. */
  final StageOption[][] options;

  /** By task: shortest time, and its only slide here or −1. */
  final int[] shortest;

  final int[] onlySlide;
  final boolean[] alone;
  final int[][] saving;

  /** By earlier and later mode: pause, −1 if they may overlap. */
  final int[][] pause;

  final int[] release;
  final int[] spindleShare;
  final int[] gripShare;
  final int[][] lag;
  final boolean[][] sameSlide;

  /** By mode: tasks that can cut with it in one of their modes, as bits. */
  final long[] partners;

  /** True if a slower mode can only help to cut with others. */
  final boolean isSlowerOnlyForCompany;

  /** True if moreover no slide takes time to shift tools. */
  final boolean isPlain;

  final boolean[][] apart;

  StageTables(ProblemTables tables, PairSavings savings, int stage) {
    this.tables = tables;
    this.stage = stage;
    int n = tables.taskCount;
    slideCount = savings.slidesIn(stage);
    int[] first = new int[n + 1];
    for (int i = 0; i < n; i++) {
      first[i + 1] = first[i] + tables.problem.tasks().get(i).modes().size();
    }
    options = new StageOption[n][];
    shortest = new int[n];
    onlySlide = new int[n];
    alone = new boolean[n];
    saving = new int[n][n];
    lag = new int[n][n];
    sameSlide = new boolean[n][n];
    apart = new boolean[n][n];
    pause = new int[first[n]][first[n]];
    release = new int[first[n]];
    spindleShare = new int[first[n]];
    gripShare = new int[first[n]];
    for (int i = 0; i < n; i++) {
      options[i] = options(i, first[i]);
      shortest[i] = options[i].length == 0 ? 0 : options[i][0].durationMs();
      onlySlide[i] = onlySlide(options[i]);
      alone[i] = savings.cutsAlone(i, stage);
      for (int j = 0; j < n; j++) {
        saving[i][j] = savings.savingMs(i, j, stage);
        lag[i][j] = tables.precedes[i][j] ? 0 : -1;
      }
    }
    fillModes(first);
    fillRules();
    partners = partners(first);
    boolean shifts = false;
    for (int s = 0; s < tables.slideCount(); s++) {
      shifts |= tables.stageOfSlide[s] == stage && tables.shiftMs(s) > 0;
    }
    isPlain =
        !shifts
            && !hasLoads()
            && tables.spindle(stage).runUpRevPerMinPerS() == 0
            && tables.spindle(stage).orientMs() == 0;
    isSlowerOnlyForCompany =
        !hasLoads()
            && tables.spindle(stage).runUpRevPerMinPerS() == 0
            && tables.spindle(stage).orientMs() == 0;
  }

  private StageOption[] options(int task, int firstMode) {
    List<StageOption> list = new ArrayList<>();
    for (int s : tables.slidesOf[task]) {
      if (tables.stageOfSlide[s] == stage && tables.windows[task].holds(stage)) {
        for (int m : tables.modesOf[task]) {
          if (tables.allowed[task][s][m]) {
            list.add(new StageOption(s, firstMode + m, tables.mode(task, m).durationMs()));
          }
        }
      }
    }
    list.sort(Comparator.comparingInt(StageOption::durationMs));
    return list.toArray(StageOption[]::new);
  }

  private static int onlySlide(StageOption[] options) {
    int slide = options.length == 0 ? -1 : options[0].slide();
    for (StageOption option : options) {
      slide = option.slide() == slide ? slide : -1;
    }
    return slide;
  }

  private void fillModes(int[] first) {
    SpindleRules rules = tables.spindle(stage);
    boolean[][] never = new boolean[tables.taskCount][tables.taskCount];
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_NOT_OVERLAP)) {
      never[pair[0]][pair[1]] = true;
      never[pair[1]][pair[0]] = true;
    }
    for (int i = 0; i < tables.taskCount; i++) {
      for (int a = first[i]; a < first[i + 1]; a++) {
        Mode mode = tables.mode(i, a - first[i]);
        release[a] = tables.releaseMs(stage, mode);
        spindleShare[a] = mode.spindleSharePermille();
        gripShare[a] = mode.gripSharePermille();
        for (int j = 0; j < tables.taskCount; j++) {
          for (int b = first[j]; b < first[j + 1]; b++) {
            Mode other = tables.mode(j, b - first[j]);
            boolean overlap = !never[i][j] && rules.canOverlap(mode, other);
            pause[a][b] = overlap ? -1 : rules.changeMs(mode, other);
          }
        }
      }
    }
  }

  private void fillRules() {
    for (ProblemTables.Arc arc : tables.arcs) {
      int before = arc.before();
      int after = arc.after();
      lag[before][after] = Math.max(lag[before][after], arc.lagMs());
      apart[before][after] |= arc.sharing() == Precedence.Sharing.LATER_POSITION;
      apart[after][before] |= arc.sharing() == Precedence.Sharing.LATER_POSITION;
      sameSlide[before][after] |= arc.sharing() == Precedence.Sharing.SAME_SLIDE;
      sameSlide[after][before] |= arc.sharing() == Precedence.Sharing.SAME_SLIDE;
    }
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_NOT_SHARE)) {
      apart[pair[0]][pair[1]] = true;
      apart[pair[1]][pair[0]] = true;
    }
    int cut = tables.cutTask;
    for (int i = 0; cut >= 0 && i < tables.taskCount; i++) {
      if (i != cut) {
        lag[i][cut] = Math.max(lag[i][cut], 0);
      }
    }
  }

  private long[] partners(int[] first) {
    long[] masks = new long[pause.length];
    for (int i = 0; i < tables.taskCount; i++) {
      for (int a = first[i]; a < first[i + 1]; a++) {
        for (int j = 0; j < tables.taskCount; j++) {
          if (i != j && lag[i][j] < 0 && lag[j][i] < 0 && joins(a, first[j], first[j + 1])) {
            masks[a] |= 1L << j;
          }
        }
      }
    }
    return masks;
  }

  private boolean joins(int mode, int from, int to) {
    for (int b = from; b < to; b++) {
      if (pause[mode][b] < 0) {
        return true;
      }
    }
    return false;
  }

  /** True if tasks take a share of spindle or grip. */
  boolean hasLoads() {
    for (int m = 0; m < spindleShare.length; m++) {
      if (spindleShare[m] > 0 || gripShare[m] > 0) {
        return true;
      }
    }
    return false;
  }

  private int gripMs = -1;

  /** Time before which the cut-off cannot begin, in ms. */
  int gripMs() {
    return gripMs < 0 ? tables.gripMs() : gripMs;
  }

  /** The same with every lag and the grip taken away. */
  StageTables withoutLags() {
    for (int[] row : lag) {
      for (int j = 0; j < row.length; j++) {
        row[j] = Math.min(row[j], 0);
      }
    }
    gripMs = 0;
    return this;
  }

  /** True if tasks of a set have a lag between them or wait for the grip. */
  boolean hasLags(long set) {
    if (tables.cutTask >= 0 && (set >>> tables.cutTask & 1) == 1 && gripMs() > 0) {
      return true;
    }
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      for (long other = set; other != 0; other &= other - 1) {
        if (lag[i][Long.numberOfTrailingZeros(other)] > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Tasks that have the same ways, slide by slide, in another kind of stage, as bits. */
  long alike(StageTables other) {
    boolean sameKind = stage < tables.drumCount == other.stage < tables.drumCount;
    if (!sameKind || !slideRules().equals(other.slideRules())) {
      return 0;
    }
    long bits = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      bits |= options[i].length > 0 && ways(i).equals(other.ways(i)) ? 1L << i : 0;
    }
    return bits;
  }

  private List<Integer> slideRules() {
    List<Integer> rules = new ArrayList<>();
    for (int s = 0; s < tables.slideCount(); s++) {
      if (tables.stageOfSlide[s] == stage) {
        rules.add(tables.seatCount(s));
        rules.add(tables.shiftMs(s));
      }
    }
    return rules;
  }

  /**
   * Slide counted within the stage, mode and time of each way; the slide of no account if alone.
   */
  private List<Integer> ways(int task) {
    List<Integer> ways = new ArrayList<>();
    ways.add(alone[task] ? 1 : 0);
    for (StageOption way : options[task]) {
      boolean anySlide = isPlain && alone[task];
      if (!anySlide || ways.size() == 1) {
        ways.add(anySlide ? 0 : place(way.slide()));
        ways.add(way.mode());
      }
    }
    return ways;
  }

  private int place(int slide) {
    int place = 0;
    for (int s = 0; s < slide; s++) {
      place += tables.stageOfSlide[s] == stage ? 1 : 0;
    }
    return place;
  }
}
