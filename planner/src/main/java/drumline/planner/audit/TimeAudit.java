package drumline.planner.audit;

import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.SpindleRules;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.ToIntFunction;

/** Rules on what happens at one moment in one position. */
final class TimeAudit {
  private final PlanningProblem problem;
  private final List<PlacedTask> tasks;

  TimeAudit(PlanningProblem problem, List<PlacedTask> tasks) {
    this.problem = problem;
    this.tasks = tasks;
  }

  List<AuditCheck> checks() {
    return List.of(
        new AuditCheck("one-at-a-time", oneAtATime()),
        new AuditCheck("spindle-condition", conditions()),
        new AuditCheck("condition-change", changes()),
        new AuditCheck("first-condition", releases()),
        new AuditCheck("common-speed", commonSpeed()),
        new AuditCheck("spindle-load", loads("spindle", Mode::spindleSharePermille)),
        new AuditCheck("grip-load", loads("grip", Mode::gripSharePermille)));
  }

  private SpindleRules rules(PlacedTask task) {
    return task.position() <= problem.positionCount()
        ? problem.spindle()
        : problem.pickUp().orElseThrow().spindle();
  }

  private void neighbours(BiConsumer<PlacedTask, PlacedTask> visit) {
    for (PlacedTask first : tasks) {
      for (PlacedTask second : tasks) {
        if (!first.id().equals(second.id()) && first.position() == second.position()) {
          visit.accept(first, second);
        }
      }
    }
  }

  private List<String> oneAtATime() {
    List<String> broken = new ArrayList<>();
    neighbours(
        (a, b) -> {
          boolean ordered = a.at().startMs() <= b.at().startMs();
          int gapMs = b.at().startMs() - a.at().endMs();
          if (a.slide().equals(b.slide()) && ordered && gapMs < a.slide().toolShiftMs()) {
            broken.add(b.words() + " begins before its slide has done with " + a.words());
          }
        });
    return broken;
  }

  private List<String> conditions() {
    List<String> broken = new ArrayList<>();
    neighbours(
        (a, b) -> {
          if (a.id().compareTo(b.id()) < 0 && a.overlaps(b) && !agree(a, b)) {
            broken.add(a.words() + " and " + b.words() + " need different spindle conditions");
          }
        });
    return broken;
  }

  private boolean agree(PlacedTask a, PlacedTask b) {
    if (a.is(SpindleCondition.C_AXIS) || b.is(SpindleCondition.C_AXIS)) {
      return false;
    }
    if (a.is(SpindleCondition.EXCLUSIVE_TURNING) || b.is(SpindleCondition.EXCLUSIVE_TURNING)) {
      return false;
    }
    if (a.is(SpindleCondition.HELD) || b.is(SpindleCondition.HELD)) {
      String angle = a.mode().holdAngle();
      return a.is(SpindleCondition.HELD)
          && b.is(SpindleCondition.HELD)
          && rules(a).heldWork() == SpindleRules.HeldWork.SAME_ANGLE_TOGETHER
          && !angle.isBlank()
          && angle.equals(b.mode().holdAngle());
    }
    return a.is(SpindleCondition.ANY)
        || b.is(SpindleCondition.ANY)
        || a.mode().revPerMin() == b.mode().revPerMin();
  }

  private List<String> changes() {
    List<String> broken = new ArrayList<>();
    neighbours(
        (a, b) -> {
          boolean free = a.is(SpindleCondition.ANY) || b.is(SpindleCondition.ANY);
          if (!free && a.isBefore(b) && !changes(a, b)) {
            broken.add(b.words() + " begins before the spindle has changed after " + a.words());
          }
        });
    return broken;
  }

  private boolean changes(PlacedTask a, PlacedTask b) {
    SpindleRules rules = rules(a);
    long gapMs = (long) b.at().startMs() - a.at().endMs();
    if (b.stands() && !a.stands()) {
      gapMs -= rules.orientMs();
    }
    long changeRevPerMin = Math.abs(a.speedRevPerMin() - b.speedRevPerMin());
    return gapMs >= 0 && covers(gapMs, changeRevPerMin, rules.runUpRevPerMinPerS());
  }

  /** True if a time is long enough for a change of speed. */
  private static boolean covers(long timeMs, long changeRevPerMin, int runUpRevPerMinPerS) {
    return runUpRevPerMinPerS == 0 || timeMs * runUpRevPerMinPerS >= changeRevPerMin * 1000;
  }

  private List<String> releases() {
    List<String> broken = new ArrayList<>();
    for (PlacedTask t : tasks) {
      SpindleRules rules = rules(t);
      boolean inDrum = t.position() <= problem.positionCount();
      long timeMs = t.at().startMs();
      timeMs += inDrum ? problem.indexMs() : problem.pickUp().orElseThrow().retractMs();
      timeMs -= t.stands() ? rules.orientMs() : 0;
      long n = t.speedRevPerMin();
      long change = Math.max(n, rules.topRevPerMin() - n);
      boolean kept =
          t.is(SpindleCondition.ANY)
              || (timeMs >= 0 && covers(timeMs, change, rules.runUpRevPerMinPerS()));
      if (!kept) {
        broken.add(t.words() + " begins before the spindle has reached its first condition");
      }
    }
    return broken;
  }

  private List<String> commonSpeed() {
    if (problem.spindle().drive() != SpindleRules.Drive.COMMON_SPEED) {
      return List.of();
    }
    List<Integer> speeds =
        tasks.stream()
            .filter(t -> t.position() <= problem.positionCount())
            .filter(t -> t.is(SpindleCondition.TURNING) || t.is(SpindleCondition.EXCLUSIVE_TURNING))
            .map(PlacedTask::speedRevPerMin)
            .distinct()
            .toList();
    return speeds.size() <= 1
        ? List.of()
        : List.of("the drum would turn at " + speeds + " rev/min at once");
  }

  private List<String> loads(String what, ToIntFunction<Mode> share) {
    List<String> broken = new ArrayList<>();
    for (PlacedTask at : tasks) {
      int sum =
          tasks.stream()
              .filter(t -> t.position() == at.position())
              .filter(
                  t -> t.at().startMs() <= at.at().startMs() && at.at().startMs() < t.at().endMs())
              .mapToInt(t -> share.applyAsInt(t.mode()))
              .sum();
      if (sum > 1000) {
        broken.add("at " + at.words() + " the " + what + " load is " + sum + " ‰ of 1000 ‰");
      }
    }
    return broken;
  }
}
