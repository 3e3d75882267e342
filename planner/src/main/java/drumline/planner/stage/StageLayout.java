package drumline.planner.stage;

import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.Map;

/** Turns the schedule of a stage into placements; alike stages share one schedule. */
final class StageLayout {
  private final ProblemTables tables;
  private final int[] firstMode;
  private final int[] slideHere;

  /**
   * A stage whose schedule was found for another of its kind.
   *
   * @param tables the problem
   * @param stage where the tasks are placed
   * @param like the stage that the schedule was found for
   */
  StageLayout(ProblemTables tables, int stage, int like) {
    this.tables = tables;
    firstMode = new int[tables.taskCount + 1];
    for (int i = 0; i < tables.taskCount; i++) {
      firstMode[i + 1] = firstMode[i] + tables.problem.tasks().get(i).modes().size();
    }
    slideHere = new int[tables.slideCount()];
    int next = 0;
    for (int s = 0; s < tables.slideCount(); s++) {
      if (tables.stageOfSlide[s] == like) {
        next = nextSlide(stage, next);
        slideHere[s] = next++;
      }
    }
  }

  private int nextSlide(int stage, int from) {
    int slide = from;
    while (tables.stageOfSlide[slide] != stage) {
      slide++;
    }
    return slide;
  }

  /** Adds the placements of the schedule found. */
  void read(PositionSearch search, Map<Integer, Layout.Placement> placements) {
    for (int p = 0; p < search.count(); p++) {
      int task = search.taskAt(p);
      StageOption way = search.optionAt(p);
      placements.put(
          task,
          new Layout.Placement(
              tables.problem.tasks().get(task).id(),
              tables.problem.slides().get(slideHere[way.slide()]).id(),
              way.mode() - firstMode[task],
              search.startAt(p),
              search.startAt(p) + way.durationMs()));
    }
  }
}
