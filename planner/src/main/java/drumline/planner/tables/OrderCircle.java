package drumline.planner.tables;

import java.util.ArrayList;
import java.util.List;

/** Finds tasks that would have to wait for themselves. */
public final class OrderCircle {
  private OrderCircle() {}

  /** Tasks of one circle in order, empty if there is none. */
  public static List<Integer> find(ProblemTables tables) {
    for (int i = 0; i < tables.taskCount; i++) {
      if (tables.precedes[i][i]) {
        return walk(tables, i);
      }
    }
    return List.of();
  }

  private static List<Integer> walk(ProblemTables tables, int from) {
    List<Integer> circle = new ArrayList<>(List.of(from));
    int at = from;
    do {
      at = next(tables, at, from);
      circle.add(at);
    } while (at != from && circle.size() <= tables.taskCount);
    return circle;
  }

  private static int next(ProblemTables tables, int at, int goal) {
    for (ProblemTables.Arc arc : tables.arcs) {
      if (arc.before() == at && (arc.after() == goal || tables.precedes[arc.after()][goal])) {
        return arc.after();
      }
    }
    return goal;
  }
}
