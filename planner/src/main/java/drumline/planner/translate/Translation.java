package drumline.planner.translate;

import drumline.cycle.spindle.SpeedWindow;
import drumline.planner.model.Layout.Placement;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.Task;
import drumline.shop.layout.Layout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A route and a machine as a planning problem, with the way back.
 *
 * @param machineName machine that it is for
 * @param problem the same in whole numbers; tasks have the operations' ids, slides the slides' ids
 * @param windows speeds of the turning operations at the drum, by operation id
 * @param notes what the whole numbers leave out, in sentences
 */
public record Translation(
    String machineName,
    PlanningProblem problem,
    Map<String, SpeedWindow> windows,
    List<String> notes) {

  /** Copies the collections. */
  public Translation {
    windows = Map.copyOf(windows);
    notes = List.copyOf(notes);
  }

  /**
   * The planner's layout in shop nouns: starts in seconds, speeds as planned, 0 where the spindle
   * stands. Operations that are allowed within less than one rev/min get the exact speed instead of
   * the whole one below it.
   *
   * @throws IllegalArgumentException if the layout names a task that the problem does not have
   */
  public Layout layout(drumline.planner.model.Layout planned) {
    Map<String, Task> tasks = new HashMap<>();
    problem.tasks().forEach(task -> tasks.put(task.id(), task));
    List<drumline.shop.layout.Placement> placements = new ArrayList<>();
    for (Placement placement : planned.placements()) {
      Task task = tasks.get(placement.taskId());
      if (task == null) {
        throw new IllegalArgumentException(
            "planned has task " + placement.taskId() + ", allowed: a task of the problem");
      }
      Mode mode = task.modes().get(placement.modeIndex());
      placements.add(
          new drumline.shop.layout.Placement(
              placement.taskId(),
              placement.slideId(),
              speed(task, mode),
              placement.startMs() / 1000.0));
    }
    return new Layout(machineName, placements);
  }

  /**
   * The planner's bound as it can stand beside a cycle on the clock, in seconds: for the whole
   * times and planned speeds, and so never above a cycle that was found. Speeds between the planned
   * ones can fall below it where loads that cut together just exceed the spindle or collet at a
   * planned speed.
   *
   * @param lowerBoundMs the planner's bound
   * @param cycleS cycle of the timeline
   */
  public static double boundS(int lowerBoundMs, double cycleS) {
    return Math.min(lowerBoundMs / 1000.0, cycleS);
  }

  private double speed(Task task, Mode mode) {
    double n = mode.revPerMin();
    SpeedWindow window = windows.get(task.id());
    if (window == null || mode.end() != Mode.End.DRUM) {
      return n;
    }
    if (mode.condition() == SpindleCondition.ANY) {
      return Math.min(n, window.highestRevPerMin());
    }
    double exact = exactRevPerMin(mode.revPerMin());
    return exact <= window.highestRevPerMin() ? exact : n;
  }

  /** The whole speed itself, or the slowest one of a window that holds no whole speed. */
  private double exactRevPerMin(int n) {
    return windows.values().stream()
        .mapToDouble(SpeedWindow::lowestRevPerMin)
        .filter(lowest -> lowest > n && lowest < n + 1)
        .filter(
            lowest ->
                windows.values().stream()
                    .anyMatch(w -> w.lowestRevPerMin() == lowest && w.highestRevPerMin() < n + 1))
        .findFirst()
        .orElse(n);
  }
}
