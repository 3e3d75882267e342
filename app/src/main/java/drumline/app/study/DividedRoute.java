package drumline.app.study;

import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.TranslationResult;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Allowances;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * The route of an inquiry fitted to a machine, with its longest cuts divided.
 *
 * @param whole the route before anything was divided
 * @param route the route to be planned
 * @param divided operations that were divided, with their parts
 */
public record DividedRoute(Route whole, Route route, List<String> divided) {

  /** Copies the list. */
  public DividedRoute {
    divided = List.copyOf(divided);
  }

  /** The route of an inquiry on a machine; undivided where it has errors. */
  public static DividedRoute of(Inquiry inquiry, Machine machine, Allowances allowances) {
    Route derived =
        together(
            MachineRoute.adapt(
                RouteDerivation.derive(inquiry, allowances), machine, inquiry, allowances),
            inquiry.wishes().pins());
    if (derived.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR)) {
      return new DividedRoute(derived, derived, List.of());
    }
    LongestCut longest = new LongestCut(route -> translate(inquiry, machine, route));
    Route route = longest.divide(derived);
    return new DividedRoute(derived, route, longest.divided());
  }

  /** Whether the route cannot be planned. */
  public boolean isWrong() {
    return whole.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }

  static TranslationResult translate(Inquiry inquiry, Machine machine, Route route) {
    return RouteTranslator.translate(
        route, machine, inquiry.part(), inquiry.bar(), inquiry.wishes().pins());
  }

  /** The route with the user's wish that operations share a position. */
  private static Route together(Route route, List<Pin> pins) {
    List<PairRule> pairs = new ArrayList<>(route.pairs());
    for (Pin pin : pins) {
      if (!pin.togetherWith().isEmpty()) {
        pairs.add(
            new PairRule(
                PairRule.Kind.SAME_POSITION,
                pin.operationId(),
                pin.togetherWith(),
                "as the user asks",
                "user"));
      }
    }
    return new Route(route.operations(), route.orders(), pairs, route.problems());
  }
}
