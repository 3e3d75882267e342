package drumline.route.divide;

import drumline.route.rule.RuleBook;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Divides one operation of a route into equal parts that may stand in different positions: rule
 * {@code divide-longest}. Roughing is divided along its length, drilling and slotting by depth;
 * finishing cuts are left whole, since a blend mark would show.
 */
public final class RouteDivision {
  private static final double START_MM = 0.5;
  private static final Set<OperationKind> DIVISIBLE =
      EnumSet.of(
          OperationKind.ROUGH_TURN,
          OperationKind.FORM_TURN,
          OperationKind.DRILL,
          OperationKind.ROUGH_BORE,
          OperationKind.SLOT,
          OperationKind.MILL_FLATS,
          OperationKind.FACE_DRILL,
          OperationKind.CROSS_DRILL);

  private RouteDivision() {}

  /** Whether the operation may be divided into this many parts. */
  public static boolean canDivide(Operation operation, int partsCount) {
    if (operation.end() != WorkEnd.FRONT || !DIVISIBLE.contains(operation.kind())) {
      return false;
    }
    return switch (operation.kind()) {
      case MILL_FLATS, FACE_DRILL, CROSS_DRILL -> operation.cut().passCount() % partsCount == 0;
      default -> true;
    };
  }

  /**
   * The route with one operation in parts: {@code id-1} to {@code id-n}, each after the one before.
   *
   * @throws IllegalArgumentException if the operation is not in the route, or may not be divided so
   */
  public static Route divide(Route route, String operationId, int partsCount) {
    Operation whole = route.operation(operationId);
    if (partsCount < 2 || !canDivide(whole, partsCount)) {
      throw new IllegalArgumentException(
          "partsCount: "
              + partsCount
              + " of "
              + operationId
              + ", allowed: a divisible operation, 2 or more");
    }
    List<Operation> pieces = pieces(whole, partsCount);
    List<Operation> operations = new ArrayList<>();
    for (Operation operation : route.operations()) {
      if (operation.id().equals(operationId)) {
        operations.addAll(pieces);
      } else {
        operations.add(operation);
      }
    }
    return new Route(
        operations,
        orders(route, operationId, pieces),
        pairs(route, operationId, pieces),
        route.problems());
  }

  private static List<Operation> pieces(Operation whole, int parts) {
    List<Operation> pieces = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      String title = whole.title() + " (" + part + " of " + parts + ")";
      CutSpec cut = share(whole.cut(), parts);
      List<CutRegion> removes = removes(whole, part / (double) parts);
      pieces.add(
          new Operation(
              whole.id() + "-" + part,
              whole.featureId(),
              whole.kind(),
              title,
              whole.end(),
              whole.slides(),
              whole.equipment(),
              whole.condition(),
              whole.tool(),
              cut,
              whole.loads(),
              removes,
              whole.reason() + " " + RuleBook.rule("divide-longest").text(),
              whole.ruleId(),
              whole.sources()));
    }
    return pieces;
  }

  /** One part's cut: its share of the way, with a start of its own. */
  private static CutSpec share(CutSpec cut, int parts) {
    double start = cut.feedMmPerRev() > 0 ? START_MM / cut.feedMmPerRev() : 0;
    double turns = cut.revolutionsCount() == 0 ? 0 : cut.revolutionsCount() / parts + start;
    return new CutSpec(
        turns,
        cut.fixedS() / parts,
        cut.dwellRevCount(),
        cut.lowestRevPerMin(),
        cut.highestRevPerMin(),
        cut.speedLimit(),
        cut.toolRevPerMin(),
        cut.cuttingDiameterMm(),
        cut.feedMmPerRev(),
        cut.depthMm(),
        Math.max(1, cut.passCount() / parts),
        cut.travelMm() / parts,
        cut.approachMm(),
        cut.life());
  }

  private static List<CutRegion> removes(Operation whole, double ratio) {
    return whole.removes().stream().map(region -> RegionCut.upTo(region, ratio)).toList();
  }

  private static List<OrderRule> orders(Route route, String id, List<Operation> pieces) {
    List<OrderRule> orders = new ArrayList<>();
    String first = pieces.get(0).id();
    String last = pieces.get(pieces.size() - 1).id();
    for (OrderRule order : route.orders()) {
      String before = order.beforeId().equals(id) ? last : order.beforeId();
      String after = order.afterId().equals(id) ? first : order.afterId();
      orders.add(new OrderRule(before, after, order.reason(), order.ruleId()));
    }
    for (int i = 1; i < pieces.size(); i++) {
      orders.add(
          new OrderRule(
              pieces.get(i - 1).id(),
              pieces.get(i).id(),
              RuleBook.rule("divide-longest").text(),
              "divide-longest"));
    }
    return orders;
  }

  private static List<PairRule> pairs(Route route, String id, List<Operation> pieces) {
    List<PairRule> pairs = new ArrayList<>();
    for (PairRule pair : route.pairs()) {
      if (!pair.oneId().equals(id) && !pair.otherId().equals(id)) {
        pairs.add(pair);
        continue;
      }
      for (Operation piece : pieces) {
        String one = pair.oneId().equals(id) ? piece.id() : pair.oneId();
        String other = pair.otherId().equals(id) ? piece.id() : pair.otherId();
        pairs.add(new PairRule(pair.kind(), one, other, pair.reason(), pair.ruleId()));
      }
    }
    return pairs;
  }
}
