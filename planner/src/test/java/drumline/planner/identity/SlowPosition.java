package drumline.planner.identity;

import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.SpindleRules;
import java.util.ArrayList;
import java.util.List;

/**
 * The shortest time of one position: every order, each task at the first ms that breaks nothing.
 */
final class SlowPosition {
  private static final int NEVER = Integer.MAX_VALUE;
  private static final int LATEST_MS = 200;
  private final PlanningProblem problem;
  private final List<Put> puts;
  private final SpindleRules rules;
  private final int hiddenMs;
  private int best = NEVER;

  record Put(String id, Slide slide, int index, Mode mode) {
    int position() {
      return slide.position();
    }
  }

  private record At(Put put, int start) {
    int end() {
      return start + put.mode().durationMs();
    }
  }

  SlowPosition(PlanningProblem problem, List<Put> puts) {
    this.problem = problem;
    this.puts = puts;
    boolean drum = puts.get(0).position() <= problem.positionCount();
    rules = drum ? problem.spindle() : problem.pickUp().orElseThrow().spindle();
    hiddenMs = drum ? problem.indexMs() : problem.pickUp().orElseThrow().retractMs();
  }

  int shortestMs() {
    order(new ArrayList<>(), new ArrayList<>(puts));
    return best;
  }

  /** Tasks are placed in the order of their starts; the cut-off may wait for those beside it. */
  private void order(List<Put> chosen, List<Put> left) {
    if (left.isEmpty()) {
      for (int cutFrom = 0; cutFrom <= 40; cutFrom++) {
        int time = place(chosen, cutFrom);
        if (time < NEVER) {
          best = Math.min(best, time);
          return;
        }
        if (puts.stream().noneMatch(this::isCut)) {
          return;
        }
      }
      return;
    }
    for (Put next : List.copyOf(left)) {
      chosen.add(next);
      left.remove(next);
      order(chosen, left);
      left.add(next);
      chosen.remove(chosen.size() - 1);
    }
  }

  private boolean isCut(Put put) {
    return problem.cutOff().filter(c -> c.taskId().equals(put.id())).isPresent();
  }

  private int place(List<Put> order, int cutFrom) {
    List<At> placed = new ArrayList<>();
    int time = 0;
    int previous = 0;
    for (Put put : order) {
      int from = Math.max(previous, isCut(put) ? cutFrom : 0);
      int t = from;
      while (t <= LATEST_MS && !fits(new At(put, t), placed)) {
        t++;
      }
      if (t > LATEST_MS) {
        return NEVER;
      }
      placed.add(new At(put, t));
      previous = t;
      int feed = isCut(put) ? problem.cutOff().orElseThrow().barFeedMs() : 0;
      time = Math.max(time, t + put.mode().durationMs() + feed);
    }
    return time;
  }

  private boolean fits(At at, List<At> placed) {
    if (!reached(at)) {
      return false;
    }
    for (At other : placed) {
      if (!agree(other, at)) {
        return false;
      }
    }
    List<At> all = new ArrayList<>(placed);
    all.add(at);
    for (At moment : all) {
      int spindle = 0;
      int grip = 0;
      for (At a : all) {
        if (a.start() <= moment.start() && moment.start() < a.end()) {
          spindle += a.put().mode().spindleSharePermille();
          grip += a.put().mode().gripSharePermille();
        }
      }
      if (spindle > 1000 || grip > 1000) {
        return false;
      }
    }
    return true;
  }

  private boolean reached(At at) {
    Mode mode = at.put().mode();
    if (isCut(at.put())
        && problem.pickUp().isPresent()
        && at.start() < problem.pickUp().get().gripMs()) {
      return false;
    }
    if (mode.condition() == SpindleCondition.ANY) {
      return true;
    }
    int n = mode.revPerMin();
    int need =
        speedChange(Math.max(n, rules.topRevPerMin() - n)) + (stands(mode) ? rules.orientMs() : 0);
    return at.start() >= need - hiddenMs;
  }

  private int speedChange(int revPerMin) {
    if (rules.runUpRevPerMinPerS() == 0) {
      return 0;
    }
    return (int) Math.ceil(revPerMin * 1000.0 / rules.runUpRevPerMinPerS() - 1e-9);
  }

  private static boolean stands(Mode mode) {
    return mode.condition() == SpindleCondition.HELD || mode.condition() == SpindleCondition.C_AXIS;
  }

  /** Whether a task may start where it does, given one that starts no later. */
  private boolean agree(At first, At second) {
    for (Precedence rule : problem.precedences()) {
      if (rule.beforeId().equals(second.put().id()) && rule.afterId().equals(first.put().id())) {
        return false;
      }
      if (rule.beforeId().equals(first.put().id())
          && rule.afterId().equals(second.put().id())
          && second.start() < first.end() + rule.lagMs()) {
        return false;
      }
    }
    if (!agreeWithCut(first, second)) {
      return false;
    }
    if (first.put().slide().equals(second.put().slide())
        && second.start() < first.end() + first.put().slide().toolShiftMs()) {
      return false;
    }
    if (second.start() < first.end()) {
      return mayOverlap(first.put(), second.put());
    }
    Mode a = first.put().mode();
    Mode b = second.put().mode();
    if (a.condition() == SpindleCondition.ANY || b.condition() == SpindleCondition.ANY) {
      return true;
    }
    int change = speedChange(Math.abs(a.revPerMin() - b.revPerMin()));
    change += stands(b) && !stands(a) ? rules.orientMs() : 0;
    return second.start() >= first.end() + change;
  }

  private boolean agreeWithCut(At first, At second) {
    if (isCut(first.put())) {
      return beside(second) && second.end() <= first.end();
    }
    if (isCut(second.put())) {
      return beside(first) ? first.end() <= second.end() : first.end() <= second.start();
    }
    return true;
  }

  private boolean beside(At at) {
    return problem.cutOff().orElseThrow().overlapTaskIds().contains(at.put().id());
  }

  private boolean mayOverlap(Put first, Put second) {
    for (PairRule rule : problem.pairRules()) {
      boolean named =
          (rule.firstId().equals(first.id()) && rule.secondId().equals(second.id()))
              || (rule.firstId().equals(second.id()) && rule.secondId().equals(first.id()));
      if (named && rule.kind() == PairRule.Kind.MUST_NOT_OVERLAP) {
        return false;
      }
    }
    Mode a = first.mode();
    Mode b = second.mode();
    return switch (a.condition()) {
      case C_AXIS, EXCLUSIVE_TURNING -> false;
      case HELD ->
          b.condition() == SpindleCondition.HELD
              && rules.heldWork() == SpindleRules.HeldWork.SAME_ANGLE_TOGETHER
              && a.holdAngle().equals(b.holdAngle())
              && !a.holdAngle().isEmpty();
      case ANY ->
          b.condition() == SpindleCondition.ANY || b.condition() == SpindleCondition.TURNING;
      case TURNING ->
          b.condition() == SpindleCondition.ANY
              || (b.condition() == SpindleCondition.TURNING && a.revPerMin() == b.revPerMin());
    };
  }
}
