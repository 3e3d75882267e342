package drumline.app.divide;

import drumline.app.layout.FittedRoute;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.TranslationResult;
import drumline.route.divide.RouteDivision;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem.Severity;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The route of an inquiry fitted to a machine, with its longest cuts divided.
 *
 * @param whole the route before anything was divided
 * @param route the route to be planned
 * @param partCounts operations that were divided, with the number of their parts
 */
public record DividedRoute(Route whole, Route route, Map<String, Integer> partCounts) {

  /** Copies the map. */
  public DividedRoute {
    partCounts = Map.copyOf(partCounts);
  }

  /** The route of an inquiry on a machine; undivided where it has errors or the rule is off. */
  public static DividedRoute of(Inquiry inquiry, Machine machine) {
    Route derived = FittedRoute.of(inquiry, machine);
    if (derived.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR)) {
      return new DividedRoute(derived, derived, Map.of());
    }
    if (!FittedRoute.practice(inquiry).uses("divide-longest")) {
      return new DividedRoute(derived, derived, Map.of());
    }
    LongestCut longest = new LongestCut(route -> translate(inquiry, machine, route));
    Route route = longest.divide(derived);
    return new DividedRoute(derived, route, longest.partCounts());
  }

  /** A route with the same operations, divided in the same way. */
  public Route divide(Route other) {
    Route result = other;
    for (Map.Entry<String, Integer> entry : partCounts.entrySet()) {
      result = RouteDivision.divide(result, entry.getKey(), entry.getValue());
    }
    return result;
  }

  /** The divided operations in words, for the study's notes. */
  public List<String> divided() {
    return partCounts.entrySet().stream()
        .map(e -> e.getKey() + " in " + e.getValue() + " parts")
        .sorted()
        .toList();
  }

  /** The same with one more operation in parts. */
  public DividedRoute with(GoverningCut.Division division) {
    Map<String, Integer> more = new TreeMap<>(partCounts);
    more.put(division.operationId(), division.partCount());
    return new DividedRoute(whole, division.route(), more);
  }

  /** Whether the route cannot be planned. */
  public boolean isWrong() {
    return whole.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }

  /** A route of the inquiry in the planner's terms. */
  public static TranslationResult translate(Inquiry inquiry, Machine machine, Route route) {
    return RouteTranslator.translate(
        route, machine, inquiry.part(), inquiry.bar(), inquiry.wishes().pins());
  }
}
