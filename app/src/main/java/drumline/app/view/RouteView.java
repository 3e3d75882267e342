package drumline.app.view;

import drumline.app.answer.PlacedProblem;
import drumline.app.answer.sheet.OperationFigures;
import drumline.app.answer.sheet.RouteAnswer;
import drumline.app.answer.sheet.RouteAnswer.FeatureWork;
import drumline.app.answer.sheet.RouteAnswer.Order;
import drumline.app.answer.sheet.RouteAnswer.Pair;
import drumline.economics.study.Assumptions;
import drumline.economics.tool.ToolWear;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The route's leaf. */
public final class RouteView {
  private RouteView() {}

  /**
   * The answer.
   *
   * @param revision revision of the text
   * @param machineName machine that the route is adapted to, or null
   * @param layout layout whose speeds the figures are for, if there is one
   * @param words what each element is, by its id, in the order of the print
   */
  public static RouteAnswer answer(
      int revision,
      @Nullable String machineName,
      Route route,
      Optional<Layout> layout,
      Map<String, String> words,
      List<PlacedProblem> problems) {
    Map<String, List<String>> byFeature = new LinkedHashMap<>();
    words.keySet().forEach(id -> byFeature.put(id, new ArrayList<>()));
    for (Operation operation : route.operations()) {
      byFeature.computeIfAbsent(operation.featureId(), id -> new ArrayList<>()).add(operation.id());
    }
    byFeature.values().removeIf(List::isEmpty);
    return new RouteAnswer(
        revision,
        machineName,
        byFeature.entrySet().stream()
            .map(
                e ->
                    new FeatureWork(
                        e.getKey(),
                        words.getOrDefault(e.getKey(), e.getKey().replace('-', ' ')),
                        e.getValue()))
            .toList(),
        route.operations().stream().map(o -> figures(o, speed(o, layout))).toList(),
        route.orders().stream()
            .map(o -> new Order(o.beforeId(), o.afterId(), o.reason(), o.ruleId()))
            .toList(),
        route.pairs().stream()
            .map(
                p ->
                    new Pair(
                        Rounded.words(p.kind()), p.oneId(), p.otherId(), p.reason(), p.ruleId()))
            .toList(),
        problems);
  }

  /** The layout's speed of an operation, else its fastest; 0 where the spindle stands. */
  static double speed(Operation operation, Optional<Layout> layout) {
    boolean stands =
        operation.condition() == SpindleCondition.HELD
            || operation.condition() == SpindleCondition.C_AXIS;
    if (stands) {
      return 0;
    }
    return layout
        .flatMap(l -> l.findPlacement(operation.id()))
        .map(Placement::spindleRevPerMin)
        .orElse(operation.cut().highestRevPerMin());
  }

  /** An operation's figures at a speed of the spindle. */
  static OperationFigures figures(Operation operation, double speedRevPerMin) {
    CutSpec cut = operation.cut();
    double power =
        operation.loads().spindlePowerKw(speedRevPerMin) + operation.loads().toolPowerKw();
    return new OperationFigures(
        operation.id(),
        operation.featureId(),
        operation.kind().words(),
        operation.title(),
        Rounded.words(operation.end()),
        operation.tool().label(),
        Rounded.words(operation.tool().family().toolMaterial()),
        Rounded.words(operation.condition()),
        operation.slides().stream().map(Rounded::words).sorted().toList(),
        operation.equipment().stream().map(Rounded::words).sorted().toList(),
        Rounded.of(speedRevPerMin, 1),
        Rounded.of(cut.lowestRevPerMin(), 1),
        Rounded.of(cut.highestRevPerMin(), 1),
        cut.speedLimit(),
        Rounded.of(cut.toolRevPerMin(), 1),
        Rounded.of(cut.cuttingSpeedMPerMin(speedRevPerMin), 1),
        Rounded.of(cut.feedMmPerRev(), 4),
        Rounded.of(cut.depthMm(), 3),
        cut.passCount(),
        Rounded.of(cut.travelMm(), 2),
        Rounded.seconds(cut.cutS(speedRevPerMin)),
        Rounded.of(operation.loads().cuttingForceN(), 0),
        Rounded.of(operation.loads().thrustN(), 0),
        Rounded.of(operation.loads().torqueNm(), 2),
        Rounded.of(power, 3),
        toolLife(operation, speedRevPerMin),
        operation.reason(),
        operation.ruleId(),
        operation.sources());
  }

  private static @Nullable Long toolLife(Operation operation, double speedRevPerMin) {
    if (!(operation.cut().cutS(speedRevPerMin) > 0)) {
      return null;
    }
    return ToolWear.of(
            operation, speedRevPerMin, Assumptions.usual().longestLifeMin(), BigDecimal.ZERO)
        .piecesPerEdgeCount();
  }
}
