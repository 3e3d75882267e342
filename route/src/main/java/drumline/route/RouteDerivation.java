package drumline.route;

import drumline.route.draft.RouteDraft;
import drumline.route.order.OrderWriting;
import drumline.route.order.UserOrders;
import drumline.route.rule.Allowances;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** From a print to the operations that it asks for, by rules that a reader can check. */
public final class RouteDerivation {
  private RouteDerivation() {}

  /** The route of an inquiry, with the stock allowances and standard times that ship. */
  public static Route derive(Inquiry inquiry) {
    return derive(inquiry, Allowances.shipped());
  }

  /** The route of an inquiry; what cannot be solved is among the route's problems. */
  public static Route derive(Inquiry inquiry, Allowances allowances) {
    RouteDraft draft = new RouteDraft(inquiry, allowances);
    OperationWriting.write(draft);
    new OrderWriting(draft).write();
    UserOrders.write(draft);
    Route route = draft.toRoute();
    List<Problem> problems = new ArrayList<>(route.problems());
    List<String> circle = UserOrders.circle(route);
    if (!circle.isEmpty()) {
      problems.add(
          Problem.error(
              "order-circle",
              "wishes.orders",
              String.join(" before ", circle),
              "orders that close no circle",
              "Maybe take out the inquiry's order between two of these."));
    }
    if (route.operations().stream().noneMatch(o -> o.kind() == OperationKind.CUT_OFF)) {
      problems.add(
          Problem.error(
              "no-cut-off",
              "wishes.leave-out",
              "0 operations that part the piece",
              "one",
              "Maybe take the cut-off out of this list."));
    }
    return new Route(route.operations(), route.orders(), route.pairs(), problems);
  }
}
