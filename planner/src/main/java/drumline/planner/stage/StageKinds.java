package drumline.planner.stage;

import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Stages that are alike: the same slides for the same tasks, so that they hold the same sets. */
final class StageKinds {
  private final int[] kindOf;
  private final List<Integer> firstStage = new ArrayList<>();

  StageKinds(ProblemTables tables) {
    kindOf = new int[tables.stageCount];
    Map<String, Integer> kinds = new HashMap<>();
    for (int k = 0; k < tables.stageCount; k++) {
      String likeness = likeness(tables, k);
      Integer kind = kinds.get(likeness);
      if (kind == null) {
        kind = kinds.size();
        kinds.put(likeness, kind);
        firstStage.add(k);
      }
      kindOf[k] = kind;
    }
  }

  private static String likeness(ProblemTables tables, int stage) {
    StringBuilder text = new StringBuilder(stage < tables.drumCount ? "drum" : "back");
    for (int s = 0; s < tables.slideCount(); s++) {
      if (tables.stageOfSlide[s] == stage) {
        text.append('|').append(tables.seatCount(s)).append(',').append(tables.shiftMs(s));
        for (int i = 0; i < tables.taskCount; i++) {
          for (boolean mode : tables.allowed[i][s]) {
            text.append(mode ? '1' : '0');
          }
        }
      }
    }
    return text.toString();
  }

  int kind(int stage) {
    return kindOf[stage];
  }

  int count() {
    return firstStage.size();
  }

  /** A stage of a kind. */
  int stage(int kind) {
    return firstStage.get(kind);
  }
}
