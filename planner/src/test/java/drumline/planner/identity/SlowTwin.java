package drumline.planner.identity;

import drumline.planner.model.CutOff;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.PickUp;
import drumline.planner.model.Pin;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The shortest cycle by trying every slide and mode for every task, and in each position every
 * order. Written from the rules' own words; shares no code with the planner.
 */
final class SlowTwin {
  private static final int NEVER = Integer.MAX_VALUE;
  private final PlanningProblem problem;
  private final Map<String, Slide> slides = new HashMap<>();
  private final Map<String, Integer> positionTimes = new HashMap<>();
  private final List<SlowPosition.Put> puts = new ArrayList<>();
  private int best = NEVER;

  private SlowTwin(PlanningProblem problem) {
    this.problem = problem;
    problem.slides().forEach(s -> slides.put(s.id(), s));
  }

  /** The shortest cycle, empty if there is none. */
  static OptionalInt cycleMs(PlanningProblem problem) {
    SlowTwin twin = new SlowTwin(problem);
    twin.put(0);
    return twin.best == NEVER ? OptionalInt.empty() : OptionalInt.of(twin.best);
  }

  private void put(int index) {
    if (index == problem.tasks().size()) {
      best = Math.min(best, cycle());
      return;
    }
    Task task = problem.tasks().get(index);
    for (String slideId : task.slideIds()) {
      for (int m = 0; m < task.modes().size(); m++) {
        Slide slide = slides.get(slideId);
        Mode mode = task.modes().get(m);
        if (isPossible(task, slide, m, mode)) {
          puts.add(new SlowPosition.Put(task.id(), slide, m, mode));
          if (keepsPlaceRules()) {
            put(index + 1);
          }
          puts.remove(puts.size() - 1);
        }
      }
    }
  }

  private boolean isPossible(Task task, Slide slide, int index, Mode mode) {
    boolean back = slide.position() > problem.positionCount();
    if ((mode.end() == Mode.End.DRUM && back) || (mode.end() == Mode.End.BACK && !back)) {
      return false;
    }
    if (mode.spindleSharePermille() > 1000 || mode.gripSharePermille() > 1000) {
      return false;
    }
    boolean isCut = problem.cutOff().filter(c -> c.taskId().equals(task.id())).isPresent();
    if (isCut && slide.position() != problem.positionCount()) {
      return false;
    }
    for (Pin pin : problem.pins()) {
      if (pin.taskId().equals(task.id())) {
        boolean kept =
            (pin instanceof Pin.ToMode p && p.modeIndex() == index)
                || (pin instanceof Pin.ToSlide s && s.slideId().equals(slide.id()))
                || (pin instanceof Pin.NotInPosition n && n.position() != slide.position())
                || (pin instanceof Pin.ToPosition q && q.position() == slide.position());
        if (!kept) {
          return false;
        }
      }
    }
    return true;
  }

  private SlowPosition.Put find(String id) {
    return puts.stream().filter(p -> p.id().equals(id)).findFirst().orElse(null);
  }

  private boolean keepsPlaceRules() {
    for (Slide slide : problem.slides()) {
      if (puts.stream().filter(p -> p.slide().equals(slide)).count() > slide.seatCount()) {
        return false;
      }
    }
    for (Precedence rule : problem.precedences()) {
      SlowPosition.Put a = find(rule.beforeId());
      SlowPosition.Put b = find(rule.afterId());
      if (a != null && b != null && !follows(rule, a, b)) {
        return false;
      }
    }
    for (PairRule rule : problem.pairRules()) {
      SlowPosition.Put a = find(rule.firstId());
      SlowPosition.Put b = find(rule.secondId());
      if (a != null && b != null) {
        boolean share = a.position() == b.position();
        if ((share && rule.kind() == PairRule.Kind.MUST_NOT_SHARE)
            || (!share && rule.kind() == PairRule.Kind.MUST_SHARE)) {
          return false;
        }
      }
    }
    for (Map.Entry<String, Integer> limit : problem.equipment().mostByKind().entrySet()) {
      long bought =
          problem.equipment().options().stream()
              .filter(o -> o.kind().equals(limit.getKey()))
              .filter(
                  o ->
                      puts.stream()
                          .anyMatch(
                              p ->
                                  p.slide().id().equals(o.slideId())
                                      && o.taskIds().contains(p.id())))
              .count();
      if (bought > limit.getValue()) {
        return false;
      }
    }
    List<Integer> speeds =
        puts.stream()
            .filter(p -> p.position() <= problem.positionCount() && p.mode().revPerMin() > 0)
            .map(p -> p.mode().revPerMin())
            .distinct()
            .toList();
    return speeds.size() <= 1 || problem.spindle().drive().name().equals("INDEPENDENT");
  }

  private static boolean follows(Precedence rule, SlowPosition.Put a, SlowPosition.Put b) {
    if (a.position() != b.position()) {
      return a.position() < b.position();
    }
    return rule.sharing() == Precedence.Sharing.ANY_SLIDE
        || (rule.sharing() == Precedence.Sharing.SAME_SLIDE && a.slide().equals(b.slide()));
  }

  private int cycle() {
    int cycle = 0;
    for (int p = 1; p <= problem.positionCount(); p++) {
      int time = positionTime(p);
      if (time == NEVER) {
        return NEVER;
      }
      cycle = Math.max(cycle, time + problem.indexMs());
    }
    if (problem.pickUp().isPresent()) {
      PickUp pickUp = problem.pickUp().get();
      int back = positionTime(problem.positionCount() + 1);
      if (back == NEVER) {
        return NEVER;
      }
      CutOff cut = problem.cutOff().orElseThrow();
      int trip = pickUp.gripMs() + find(cut.taskId()).mode().durationMs() + pickUp.retractMs();
      trip += back + pickUp.ejectMs() + pickUp.returnMs();
      cycle = Math.max(cycle, (trip + pickUp.spindleCount() - 1) / pickUp.spindleCount());
    }
    return cycle;
  }

  private int positionTime(int position) {
    List<SlowPosition.Put> here = puts.stream().filter(p -> p.position() == position).toList();
    if (here.isEmpty()) {
      return 0;
    }
    String key =
        position + here.stream().map(p -> p.id() + p.slide().id() + p.index()).toList().toString();
    return positionTimes.computeIfAbsent(key, k -> new SlowPosition(problem, here).shortestMs());
  }
}
