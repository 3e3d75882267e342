package drumline.planner.api;

import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Whether every task finds a tool seat, all other rules aside; if not, the tasks and slides that
 * are too many and too few for each other.
 *
 * <p>Source: bipartite matching along alternating paths and Hall's condition (from memory).
 */
final class SeatShortage {
  private static final int MOST_NAMES = 8;

  private final ProblemTables tables;
  private final List<List<Integer>> onSlide = new ArrayList<>();
  private final boolean[] seen;

  private SeatShortage(ProblemTables tables) {
    this.tables = tables;
    seen = new boolean[tables.slideCount()];
    for (int s = 0; s < tables.slideCount(); s++) {
      onSlide.add(new ArrayList<>());
    }
  }

  /** The shortage in words, e.g. {@code too few tool seats: 19 tools for 16 seats}. */
  static Optional<String> find(ProblemTables tables) {
    SeatShortage shortage = new SeatShortage(tables);
    for (int i = 0; i < tables.taskCount; i++) {
      Arrays.fill(shortage.seen, false);
      if (!shortage.seat(i)) {
        return Optional.of(shortage.words());
      }
    }
    return Optional.empty();
  }

  private boolean seat(int task) {
    for (int s : tables.slidesOf[task]) {
      if (!seen[s]) {
        seen[s] = true;
        if (onSlide.get(s).size() < tables.seatCount(s)) {
          onSlide.get(s).add(task);
          return true;
        }
        for (int other : List.copyOf(onSlide.get(s))) {
          if (seat(other)) {
            onSlide.get(s).remove(Integer.valueOf(other));
            onSlide.get(s).add(task);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** All slides that the last task reached are full, with tasks that can go nowhere else. */
  private String words() {
    int seats = 0;
    int tasks = 1;
    List<String> names = new ArrayList<>();
    for (int s = 0; s < seen.length; s++) {
      if (seen[s]) {
        seats += tables.seatCount(s);
        tasks += onSlide.get(s).size();
        names.add(tables.problem.slides().get(s).id());
      }
    }
    int more = names.size() - MOST_NAMES;
    String where =
        String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size())))
            + (more > 0 ? " and " + more + " more" : "");
    return "too few tool seats: " + tasks + " tools for " + seats + " seats on " + where;
  }
}
