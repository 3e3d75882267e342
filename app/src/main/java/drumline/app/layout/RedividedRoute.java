package drumline.app.layout;

import drumline.route.divide.RouteDivision;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The route that a kept layout stands on, derived again. */
public final class RedividedRoute {
  private static final Pattern PART = Pattern.compile("(.+)-(\\d+)");

  private RedividedRoute() {}

  /** The route for a machine, with operations divided as they were; as far as they still can be. */
  public static Route of(Inquiry inquiry, Machine machine, Map<String, Integer> parts) {
    Route route = FittedRoute.of(inquiry, machine);
    for (Map.Entry<String, Integer> entry : new TreeMap<>(parts).entrySet()) {
      boolean canBe =
          route
              .findOperation(entry.getKey())
              .filter(operation -> RouteDivision.canDivide(operation, entry.getValue()))
              .isPresent();
      if (canBe) {
        route = RouteDivision.divide(route, entry.getKey(), entry.getValue());
      }
    }
    return route;
  }

  /** Which operations of a route are parts, by the name of the whole; from the derived route. */
  public static Map<String, Integer> parts(Route divided, Route derived) {
    Map<String, Integer> parts = new TreeMap<>();
    for (Operation operation : divided.operations()) {
      Matcher matcher = PART.matcher(operation.id());
      if (derived.findOperation(operation.id()).isEmpty() && matcher.matches()) {
        parts.merge(matcher.group(1), Integer.valueOf(matcher.group(2)), Math::max);
      }
    }
    return parts;
  }
}
