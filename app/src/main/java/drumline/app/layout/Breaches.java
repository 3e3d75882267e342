package drumline.app.layout;

import drumline.planner.check.Finding;
import drumline.shop.layout.Placement;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Says of each breach whom it is about, why the rule is there, and what else would have to move.
 */
public final class Breaches {
  private static final Pattern NOT_A_WORD = Pattern.compile("[^\\p{L}\\p{N}_.-]+");

  private final Route route;
  private final Set<String> moved;
  private final Map<String, Integer> positions = new HashMap<>();

  /**
   * The breaches of a layout.
   *
   * @param moved operations that a person moved and wants to stay; empty if none
   */
  public Breaches(LayoutBench bench, LaidOut laid, Set<String> moved) {
    this.route = bench.route();
    this.moved = Set.copyOf(moved);
    SlideChoice slides = new SlideChoice(bench.machine());
    for (Placement placement : laid.layout().placements()) {
      positions.put(placement.operationId(), slides.position(placement.slideId()));
    }
  }

  /** The breaches of one finding, in its order. */
  public List<Breach> of(Finding finding) {
    return finding.breaches().stream().map(words -> breach(finding.name(), words)).toList();
  }

  private Breach breach(String rule, String words) {
    List<String> ids = operations(words);
    if (rule.equals("order")) {
      for (OrderRule order : route.orders()) {
        if (isAbout(ids, words, order.afterId(), order.beforeId(), order.reason())) {
          return order(words, ids, order);
        }
      }
    }
    if (rule.equals("pairs")) {
      for (PairRule pair : route.pairs()) {
        if (isAbout(ids, words, pair.oneId(), pair.otherId(), pair.reason())) {
          return pair(words, ids, pair);
        }
      }
    }
    return new Breach(words, ids, "", List.of(), "");
  }

  private static boolean isAbout(
      List<String> ids, String words, String one, String other, String reason) {
    return ids.contains(one) && ids.contains(other) && words.endsWith(": " + reason);
  }

  private List<String> operations(String words) {
    Set<String> tokens = new LinkedHashSet<>(List.of(NOT_A_WORD.split(words)));
    List<String> ids = new ArrayList<>();
    for (String token : tokens) {
      if (route.findOperation(token).isPresent()) {
        ids.add(token);
      }
    }
    return ids;
  }

  /** With the later one moved too early, those that must come before it have to move, or else. */
  private Breach order(String words, List<String> ids, OrderRule rule) {
    boolean afterStays = moved.contains(rule.afterId()) && !moved.contains(rule.beforeId());
    String stays = afterStays ? rule.afterId() : rule.beforeId();
    int position = positions.getOrDefault(stays, 0);
    List<String> also = chain(stays, afterStays ? Way.BACKWARD : Way.FORWARD);
    String place =
        "position " + position + (afterStays ? " or before" : " or later") + ", in that order";
    return new Breach(
        words, ids, rule.reason(), also, "Maybe move " + titles(also) + " to " + place + ".");
  }

  private Breach pair(String words, List<String> ids, PairRule rule) {
    String stays = moved.contains(rule.otherId()) ? rule.otherId() : rule.oneId();
    String other = stays.equals(rule.oneId()) ? rule.otherId() : rule.oneId();
    int position = positions.getOrDefault(stays, 0);
    return switch (rule.kind()) {
      case SAME_POSITION ->
          new Breach(
              words,
              ids,
              rule.reason(),
              List.of(other),
              "Maybe move " + titles(List.of(other)) + " to position " + position + ".");
      case OTHER_POSITION ->
          new Breach(
              words,
              ids,
              rule.reason(),
              List.of(other),
              "Maybe move " + titles(List.of(other)) + " out of position " + position + ".");
      case NOT_TOGETHER -> new Breach(words, ids, rule.reason(), List.of(), "");
    };
  }

  private enum Way {
    FORWARD,
    BACKWARD
  }

  /** Operations that order rules tie to the one that stays, and that stand on its wrong side. */
  private List<String> chain(String stays, Way way) {
    int position = positions.getOrDefault(stays, 0);
    Set<String> found = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(stays));
    while (!open.isEmpty()) {
      String here = open.remove();
      for (OrderRule rule : route.orders()) {
        String from = way == Way.FORWARD ? rule.beforeId() : rule.afterId();
        String to = way == Way.FORWARD ? rule.afterId() : rule.beforeId();
        Integer there = positions.get(to);
        boolean isWrong =
            there != null && (way == Way.FORWARD ? there < position : there > position);
        if (from.equals(here) && isWrong && !to.equals(stays) && found.add(to)) {
          open.add(to);
        }
      }
    }
    return List.copyOf(found);
  }

  private String titles(List<String> ids) {
    return String.join(", ", ids.stream().map(route::operation).map(Operation::title).toList());
  }
}
