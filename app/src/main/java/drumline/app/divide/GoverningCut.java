package drumline.app.divide;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.bound.CycleBound;
import drumline.planner.model.Layout.Placement;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Slide;
import drumline.planner.tables.ProblemTables;
import drumline.planner.translate.TranslationResult;
import drumline.route.divide.RouteDivision;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Divides an operation of the position that sets the cycle, where planning again with a part of the
 * effort shows that this shortens the cycle.
 */
public final class GoverningCut {
  private static final int MOST_PARTS = 3;
  private static final int MOST_OPERATIONS = 2;
  private static final double EFFORT_SHARE = 0.2;
  private static final double LEAST_GAIN_RATIO = 0.005;

  private final Route whole;
  private final Function<Route, TranslationResult> translate;
  private final PlannerSettings settings;
  private final Cancel cancel;

  /**
   * A search for a division.
   *
   * @param whole the route before anything was divided: parts are not divided again
   */
  public GoverningCut(
      Route whole,
      Function<Route, TranslationResult> translate,
      PlannerSettings settings,
      Cancel cancel) {
    this.whole = whole;
    this.translate = translate;
    this.settings =
        new PlannerSettings(
            settings.searchS() * EFFORT_SHARE, settings.workerCount(), settings.seed());
    this.cancel = cancel;
  }

  /**
   * A division that shortens the cycle.
   *
   * @param route the route with the operation in parts
   * @param operationId what was divided
   * @param partCount in how many parts
   */
  public record Division(Route route, String operationId, int partCount) {
    /** In words, for the study's notes. */
    public String words() {
      return operationId + " in " + partCount + " parts";
    }
  }

  /** The best division of what governs a planned layout, if one shortens the cycle. */
  public Optional<Division> find(
      Route route, PlanningProblem problem, PlanningResult.Planned planned) {
    Division best = null;
    double bestMs = planned.cycleMs() * (1 - LEAST_GAIN_RATIO);
    for (Operation operation : governing(route, problem, planned)) {
      for (int parts = 2; parts <= MOST_PARTS && !cancel.isCancelled(); parts++) {
        if (RouteDivision.canDivide(operation, parts)) {
          Route divided = RouteDivision.divide(route, operation.id(), parts);
          double cycleMs = cycleMs(divided, bestMs);
          if (cycleMs < bestMs) {
            bestMs = cycleMs;
            best = new Division(divided, operation.id(), parts);
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Cycle of a route; infinite where its bound already says that nothing is gained. */
  private double cycleMs(Route route, double mostMs) {
    return translate
        .apply(route)
        .translation()
        .map(t -> t.problem())
        .filter(problem -> CycleBound.of(new ProblemTables(problem)).cycleMs() < mostMs)
        .map(problem -> Planner.plan(problem, settings, ProgressListener.silent(), cancel))
        .filter(PlanningResult.Planned.class::isInstance)
        .map(result -> (double) ((PlanningResult.Planned) result).cycleMs())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Undivided operations of the position that ends last, the longest first. */
  private List<Operation> governing(
      Route route, PlanningProblem problem, PlanningResult.Planned planned) {
    Map<String, Integer> positions = new HashMap<>();
    problem.slides().forEach((Slide s) -> positions.put(s.id(), s.position()));
    Optional<Placement> last =
        planned.layout().placements().stream()
            .filter(p -> positions.getOrDefault(p.slideId(), 0) <= problem.positionCount())
            .max(Comparator.comparingInt(Placement::endMs));
    if (last.isEmpty()
        || last.get().endMs() + problem.indexMs() < planned.cycleMs() - problem.indexMs()) {
      return List.of();
    }
    Integer position = positions.get(last.get().slideId());
    return planned.layout().placements().stream()
        .filter(p -> positions.getOrDefault(p.slideId(), 0).equals(position))
        .sorted(Comparator.comparingInt((Placement p) -> p.startMs() - p.endMs()))
        .map(p -> route.findOperation(p.taskId()))
        .flatMap(Optional::stream)
        .filter(o -> whole.findOperation(o.id()).isPresent())
        .limit(MOST_OPERATIONS)
        .toList();
  }
}
