package drumline.cycle.clock;

import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What a route's rules say about two operations in one position. */
final class RouteRules {
  private final Map<String, Set<String>> beforeById = new HashMap<>();
  private final Map<String, Set<String>> apartById = new HashMap<>();

  RouteRules(Route route) {
    for (OrderRule rule : route.orders()) {
      beforeById.computeIfAbsent(rule.afterId(), id -> new HashSet<>()).add(rule.beforeId());
    }
    for (PairRule rule : route.pairs()) {
      if (rule.kind() == PairRule.Kind.NOT_TOGETHER) {
        apartById.computeIfAbsent(rule.oneId(), id -> new HashSet<>()).add(rule.otherId());
        apartById.computeIfAbsent(rule.otherId(), id -> new HashSet<>()).add(rule.oneId());
      }
    }
  }

  /** Whether an order rule asks for one before the other. */
  boolean mustPrecede(String beforeId, String afterId) {
    return beforeById.getOrDefault(afterId, Set.of()).contains(beforeId);
  }

  /** Whether a rule forbids both at the same time. */
  boolean keepApart(String oneId, String otherId) {
    return apartById.getOrDefault(oneId, Set.of()).contains(otherId);
  }
}
