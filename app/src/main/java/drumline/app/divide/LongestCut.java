package drumline.app.divide;

import drumline.planner.bound.CycleBound;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Task;
import drumline.planner.tables.ProblemTables;
import drumline.planner.translate.TranslationResult;
import drumline.route.divide.RouteDivision;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Divides the longest cuts of a route while that lowers the bound on its cycle, or while one alone
 * fills most of it: the classic craft of levelling a drum.
 */
public final class LongestCut {
  private static final int MOST_PARTS = 3;
  private static final double FILLS_RATIO = 0.8;

  private final Function<Route, TranslationResult> translate;
  private final Map<String, Integer> parts = new HashMap<>();
  private final Set<String> whole = new HashSet<>();

  LongestCut(Function<Route, TranslationResult> translate) {
    this.translate = translate;
  }

  /** The route with its longest cuts divided; the same route where that brings nothing. */
  Route divide(Route route) {
    Route current = route;
    while (true) {
      Optional<PlanningProblem> problem = problem(current);
      if (problem.isEmpty()) {
        return current;
      }
      int bound = bound(problem.get());
      Optional<String> longest = longest(route, current, problem.get(), bound);
      if (longest.isEmpty()) {
        return current;
      }
      String id = longest.get();
      int next = parts.getOrDefault(id, 1) + 1;
      parts.put(id, next);
      Route tried = divided(route);
      Optional<PlanningProblem> after = problem(tried);
      if (after.isPresent() && bound(after.get()) <= bound) {
        current = tried;
      } else {
        parts.put(id, next - 1);
        whole.add(id);
      }
    }
  }

  private Route divided(Route route) {
    Route result = route;
    for (Map.Entry<String, Integer> entry : parts.entrySet()) {
      if (entry.getValue() > 1) {
        result = RouteDivision.divide(result, entry.getKey(), entry.getValue());
      }
    }
    return result;
  }

  /** The undivided operation whose parts take longest, if it fills most of the bound. */
  private Optional<String> longest(
      Route original, Route current, PlanningProblem problem, int boundMs) {
    Map<String, Integer> times = new HashMap<>();
    for (Task task : problem.tasks()) {
      times.put(task.id(), shortestMs(task));
    }
    int limit = (int) (FILLS_RATIO * (boundMs - problem.indexMs()));
    return original.operations().stream()
        .filter(o -> !whole.contains(o.id()) && canGoOn(o))
        .max(Comparator.comparingInt(o -> timeMs(current, times, o.id())))
        .filter(o -> timeMs(current, times, o.id()) >= limit)
        .map(Operation::id);
  }

  private boolean canGoOn(Operation operation) {
    int next = parts.getOrDefault(operation.id(), 1) + 1;
    return next <= MOST_PARTS && RouteDivision.canDivide(operation, next);
  }

  private int timeMs(Route current, Map<String, Integer> times, String id) {
    String placed = current.findOperation(id).isPresent() ? id : id + "-1";
    return times.getOrDefault(placed, 0);
  }

  private static int shortestMs(Task task) {
    return task.modes().stream().mapToInt(Mode::durationMs).min().orElse(0);
  }

  private Optional<PlanningProblem> problem(Route route) {
    return translate.apply(route).translation().map(t -> t.problem());
  }

  private static int bound(PlanningProblem problem) {
    return CycleBound.of(new ProblemTables(problem)).cycleMs();
  }

  /** Operations that were divided, with the number of their parts. */
  Map<String, Integer> partCounts() {
    return parts.entrySet().stream()
        .filter(e -> e.getValue() > 1)
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }
}
