package drumline.planner.tables;

import drumline.planner.model.Mode;
import drumline.planner.model.Pin;
import java.util.stream.IntStream;

/** Which slides and modes are left to each task by its end, its loads, the cut-off and pins. */
final class Choices {
  private final ProblemTables tables;
  private final boolean[][][] allowed;

  Choices(ProblemTables tables) {
    this.tables = tables;
    allowed = new boolean[tables.taskCount][tables.slideCount()][];
    for (int i = 0; i < tables.taskCount; i++) {
      int modeCount = tables.problem.tasks().get(i).modes().size();
      for (int s = 0; s < tables.slideCount(); s++) {
        allowed[i][s] = new boolean[modeCount];
      }
      for (String slideId : tables.problem.tasks().get(i).slideIds()) {
        open(i, tables.slide(slideId));
      }
    }
    tables.problem.pins().forEach(this::pin);
  }

  private void open(int task, int slide) {
    boolean inDrum = tables.stageOfSlide[slide] < tables.drumCount;
    if (task == tables.cutTask && tables.stageOfSlide[slide] != tables.drumCount - 1) {
      return;
    }
    for (int m = 0; m < allowed[task][slide].length; m++) {
      Mode mode = tables.mode(task, m);
      allowed[task][slide][m] = mode.end().allows(inDrum) && !mode.isOverloaded();
    }
  }

  private void pin(Pin pin) {
    boolean[][] choice = allowed[tables.task(pin.taskId())];
    for (int s = 0; s < choice.length; s++) {
      for (int m = 0; m < choice[s].length; m++) {
        choice[s][m] &= keeps(pin, s, m);
      }
    }
  }

  private boolean keeps(Pin pin, int slide, int mode) {
    if (pin instanceof Pin.ToPosition to) {
      return tables.stageOfSlide[slide] == to.position() - 1;
    }
    if (pin instanceof Pin.NotInPosition not) {
      return tables.stageOfSlide[slide] != not.position() - 1;
    }
    if (pin instanceof Pin.ToSlide to) {
      return tables.slide(to.slideId()) == slide;
    }
    return pin instanceof Pin.ToMode to && to.modeIndex() == mode;
  }

  boolean[][][] allowed() {
    return allowed;
  }

  int[][] slidesOf() {
    int[][] slides = new int[allowed.length][];
    for (int i = 0; i < allowed.length; i++) {
      boolean[][] choice = allowed[i];
      slides[i] = IntStream.range(0, choice.length).filter(s -> anyTrue(choice[s])).toArray();
    }
    return slides;
  }

  int[][] modesOf() {
    int[][] modes = new int[allowed.length][];
    for (int i = 0; i < allowed.length; i++) {
      boolean[][] choice = allowed[i];
      int modeCount = tables.problem.tasks().get(i).modes().size();
      modes[i] =
          IntStream.range(0, modeCount)
              .filter(m -> IntStream.range(0, choice.length).anyMatch(s -> choice[s][m]))
              .toArray();
    }
    return modes;
  }

  private static boolean anyTrue(boolean[] flags) {
    for (boolean flag : flags) {
      if (flag) {
        return true;
      }
    }
    return false;
  }
}
