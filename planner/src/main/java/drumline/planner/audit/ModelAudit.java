package drumline.planner.audit;

import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks every rule of a planning problem again on a finished layout. */
public final class ModelAudit {
  private ModelAudit() {}

  /** The report on a layout. */
  public static AuditReport of(PlanningProblem problem, Layout layout) {
    List<AuditCheck> checks = new ArrayList<>();
    Map<String, PlacedTask> placed = new HashMap<>();
    checks.add(places(problem, layout, placed));
    if (!checks.get(0).isPassed()) {
      return new AuditReport(checks);
    }
    List<PlacedTask> tasks = problem.tasks().stream().map(t -> placed.get(t.id())).toList();
    checks.addAll(new PlaceAudit(problem, placed).checks());
    checks.addAll(new TimeAudit(problem, tasks).checks());
    checks.addAll(new CycleAudit(problem, placed, layout.cycleMs()).checks());
    return new AuditReport(checks);
  }

  private static AuditCheck places(
      PlanningProblem problem, Layout layout, Map<String, PlacedTask> placed) {
    List<String> broken = new ArrayList<>();
    Map<String, Task> tasks = new HashMap<>();
    problem.tasks().forEach(t -> tasks.put(t.id(), t));
    Map<String, Slide> slides = new HashMap<>();
    problem.slides().forEach(s -> slides.put(s.id(), s));
    for (Layout.Placement at : layout.placements()) {
      Task task = tasks.get(at.taskId());
      Slide slide = slides.get(at.slideId());
      if (task == null
          || slide == null
          || at.modeIndex() < 0
          || at.modeIndex() >= task.modes().size()) {
        broken.add(at + " names no task, slide or mode of the problem");
        continue;
      }
      Mode mode = task.modes().get(at.modeIndex());
      if (placed.put(task.id(), new PlacedTask(task, slide, mode, at)) != null) {
        broken.add(task.id() + " is placed twice");
      }
    }
    for (Task task : problem.tasks()) {
      if (!placed.containsKey(task.id())) {
        broken.add(task.id() + " has no place");
      }
    }
    return new AuditCheck("every-task-once", broken);
  }
}
