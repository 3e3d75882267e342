package drumline.route;

import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A sequence that keeps all orders, found the slow way: take what has nothing left before it. */
public final class WorkOrder {
  private WorkOrder() {}

  /**
   * The operations in an order that keeps every rule.
   *
   * @throws IllegalStateException if the rules close a circle
   */
  public static List<Operation> of(Route route) {
    List<Operation> left = new ArrayList<>(route.operations());
    Set<String> done = new HashSet<>();
    List<Operation> sequence = new ArrayList<>();
    while (!left.isEmpty()) {
      Operation next =
          left.stream()
              .filter(o -> before(route, o.id()).stream().allMatch(done::contains))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("a circle among " + ids(left)));
      left.remove(next);
      done.add(next.id());
      sequence.add(next);
    }
    return sequence;
  }

  /** Everything that must come before an operation, at first or at second hand. */
  public static Set<String> allBefore(Route route, String id) {
    Set<String> all = new HashSet<>();
    List<String> open = new ArrayList<>(before(route, id));
    while (!open.isEmpty()) {
      String one = open.remove(open.size() - 1);
      if (all.add(one)) {
        open.addAll(before(route, one));
      }
    }
    return all;
  }

  private static List<String> before(Route route, String id) {
    return route.orders().stream()
        .filter(o -> o.afterId().equals(id))
        .map(OrderRule::beforeId)
        .toList();
  }

  private static List<String> ids(List<Operation> operations) {
    return operations.stream().map(Operation::id).toList();
  }
}
