package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Mode;
import drumline.planner.model.SpindleCondition;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One speed for all turning tasks of the drum. */
final class CommonSpeed {
  private CommonSpeed() {}

  static void add(Choice choice) {
    ProblemTables tables = choice.tables;
    Map<Integer, BoolVar> speeds = new TreeMap<>();
    for (int i = 0; i < tables.taskCount; i++) {
      for (int m : tables.modesOf[i]) {
        Mode mode = tables.mode(i, m);
        if (isTurning(mode)) {
          speeds.computeIfAbsent(mode.revPerMin(), n -> choice.model.newBoolVar("n" + n));
        }
      }
    }
    choice.model.addAtMostOne(speeds.values().toArray(new Literal[0]));
    for (int i = 0; i < tables.taskCount; i++) {
      for (int m : tables.modesOf[i]) {
        BoolVar speed = speeds.get(tables.mode(i, m).revPerMin());
        if (isTurning(tables.mode(i, m)) && speed != null) {
          bind(choice, i, m, speed);
        }
      }
    }
  }

  private static void bind(Choice choice, int task, int mode, BoolVar speed) {
    Literal inMode = choice.inMode[task][mode];
    if (inMode == null) {
      return;
    }
    if (choice.tables.stageCount == choice.tables.drumCount) {
      choice.model.addImplication(inMode, speed);
      return;
    }
    for (Literal inDrum : choice.inDrum(task)) {
      List<Literal> clause = new ArrayList<>(List.of(inDrum.not(), inMode.not(), speed));
      choice.model.addBoolOr(clause.toArray(new Literal[0]));
    }
  }

  private static boolean isTurning(Mode mode) {
    return mode.condition() == SpindleCondition.TURNING
        || mode.condition() == SpindleCondition.EXCLUSIVE_TURNING;
  }
}
