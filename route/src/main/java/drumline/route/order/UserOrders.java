package drumline.route.order;

import drumline.route.draft.RouteDraft;
import drumline.route.rule.RuleBook;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Orders that the inquiry asks for, and circles that they may close. */
public final class UserOrders {
  private static final String RULE_ID = "user-order";

  private UserOrders() {}

  /** Takes the inquiry's orders; names of operations that do not exist become problems. */
  public static void write(RouteDraft draft) {
    Set<String> known = new HashSet<>();
    draft.where(o -> true).forEach(o -> known.add(o.id()));
    for (OrderRule order : draft.inquiry().wishes().orders()) {
      List<String> strange =
          Stream.of(order.beforeId(), order.afterId()).filter(id -> !known.contains(id)).toList();
      strange.forEach(id -> draft.problem(unknown("wishes.orders", id, known)));
      if (strange.isEmpty()) {
        draft.userOrder(asked(order));
      }
    }
    for (String id : draft.inquiry().wishes().leaveOut()) {
      if (!draft.leftOut().contains(id)) {
        draft.problem(unknown("wishes.leave-out", id, known));
      }
    }
  }

  private static OrderRule asked(OrderRule order) {
    String reason = order.reason().isBlank() ? RuleBook.rule(RULE_ID).text() : order.reason();
    return new OrderRule(order.beforeId(), order.afterId(), reason, RULE_ID);
  }

  private static Problem unknown(String where, String id, Set<String> known) {
    return Problem.error(
        "unknown-operation",
        where,
        id,
        "the id of an operation of the route",
        "Maybe one of these: " + String.join(", ", alike(id, known)) + ".");
  }

  /** The operations of a circle of orders, first again at the end; empty if there is none. */
  public static List<String> circle(Route route) {
    Set<String> done = new HashSet<>();
    for (Operation operation : route.operations()) {
      List<String> path = new ArrayList<>();
      List<String> circle = follow(route, operation.id(), path, done);
      if (!circle.isEmpty()) {
        return circle;
      }
    }
    return List.of();
  }

  private static List<String> follow(Route route, String id, List<String> path, Set<String> done) {
    int at = path.indexOf(id);
    if (at >= 0) {
      List<String> circle = new ArrayList<>(path.subList(at, path.size()));
      circle.add(id);
      return circle;
    }
    if (done.contains(id)) {
      return List.of();
    }
    path.add(id);
    for (OrderRule order : route.orders()) {
      if (order.beforeId().equals(id)) {
        List<String> circle = follow(route, order.afterId(), path, done);
        if (!circle.isEmpty()) {
          return circle;
        }
      }
    }
    path.remove(path.size() - 1);
    done.add(id);
    return List.of();
  }

  private static List<String> alike(String id, Set<String> known) {
    String stem = id.contains("-") ? id.substring(0, id.indexOf('-')) : id;
    List<String> same = known.stream().filter(k -> k.startsWith(stem)).sorted().limit(5).toList();
    return same.isEmpty() ? known.stream().sorted().limit(5).toList() : same;
  }
}
