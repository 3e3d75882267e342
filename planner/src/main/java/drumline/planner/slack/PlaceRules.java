package drumline.planner.slack;

import drumline.planner.model.PairRule;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which places the rules allow an operation, the clock aside. */
final class PlaceRules {
  private static final double AFTER_ALL_S = 1e6;
  private static final double EARLIER_S = 1e-3;

  private final PlanningProblem problem;
  private final Map<String, Task> tasks = new HashMap<>();
  private final Map<String, Slide> slides = new HashMap<>();

  PlaceRules(PlanningProblem problem) {
    this.problem = problem;
    problem.tasks().forEach(task -> tasks.put(task.id(), task));
    problem.slides().forEach(slide -> slides.put(slide.id(), slide));
  }

  /** Slides that may carry an operation in the drum; none for the cut-off, which stays. */
  List<String> slides(String operationId) {
    Task task = tasks.get(operationId);
    if (task == null
        || problem.cutOff().map(cut -> cut.taskId().equals(operationId)).orElse(false)) {
      return List.of();
    }
    return task.slideIds().stream().filter(id -> position(id) <= problem.positionCount()).toList();
  }

  /** Whether seats, orders between positions and pair rules are kept. */
  boolean allow(Layout layout) {
    Map<String, Integer> positions = new HashMap<>();
    Map<String, Integer> used = new HashMap<>();
    for (Placement placement : layout.placements()) {
      positions.put(placement.operationId(), position(placement.slideId()));
      used.merge(placement.slideId(), 1, Integer::sum);
    }
    return used.entrySet().stream().allMatch(e -> e.getValue() <= seats(e.getKey()))
        && problem.precedences().stream().allMatch(p -> inOrder(p, positions))
        && problem.pairRules().stream().allMatch(p -> isKept(p, positions));
  }

  /**
   * Planned start in a new position: before what must follow there, else after everything; empty
   * where something there must come before it and yet starts later.
   */
  Optional<Double> findStart(Layout layout, String operationId, String slideId) {
    int target = position(slideId);
    double start = AFTER_ALL_S;
    for (Placement there : layout.placements()) {
      if (position(there.slideId()) == target && follows(operationId, there.operationId())) {
        start = Math.min(start, there.plannedStartS() - EARLIER_S);
      }
    }
    for (Placement there : layout.placements()) {
      if (position(there.slideId()) == target
          && follows(there.operationId(), operationId)
          && there.plannedStartS() >= start) {
        return Optional.empty();
      }
    }
    return Optional.of(start);
  }

  private boolean follows(String beforeId, String afterId) {
    return problem.precedences().stream()
        .anyMatch(p -> p.beforeId().equals(beforeId) && p.afterId().equals(afterId));
  }

  private static boolean inOrder(Precedence order, Map<String, Integer> positions) {
    Integer before = positions.get(order.beforeId());
    Integer after = positions.get(order.afterId());
    return before == null || after == null || before <= after;
  }

  private static boolean isKept(PairRule rule, Map<String, Integer> positions) {
    Integer one = positions.get(rule.firstId());
    Integer other = positions.get(rule.secondId());
    if (one == null || other == null) {
      return true;
    }
    return switch (rule.kind()) {
      case MUST_SHARE -> one.equals(other);
      case MUST_NOT_SHARE -> !one.equals(other);
      case MUST_NOT_OVERLAP -> true;
    };
  }

  private int position(String slideId) {
    Slide slide = slides.get(slideId);
    return slide == null ? Integer.MAX_VALUE : slide.position();
  }

  private int seats(String slideId) {
    Slide slide = slides.get(slideId);
    return slide == null ? 0 : slide.seatCount();
  }
}
