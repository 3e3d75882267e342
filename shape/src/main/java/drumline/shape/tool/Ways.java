package drumline.shape.tool;

import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.tooling.ToolKind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The way of each kind of operation's cutting point, seen from the working end. */
final class Ways {

  private static final double CLEAR_MM = 0.5;
  private static final double CHAMFER_MM = 0.2;
  private static final Set<OperationKind> PLUNGING =
      EnumSet.of(OperationKind.FORM_TURN, OperationKind.GROOVE, OperationKind.CUT_OFF);

  private final WorkSide side;
  private final Operation operation;

  Ways(WorkSide side, Operation operation) {
    this.side = side;
    this.operation = operation;
  }

  /** Corners of the way while it cuts. */
  List<PointZr> cut() {
    List<CutRegion> regions = side.removes(operation);
    double stock = side.stockRMm();
    if (operation.kind() == OperationKind.FACE) {
      return face(regions);
    }
    if (regions.isEmpty()) {
      return feature();
    }
    boolean isBlade = operation.tool().family().kind() == ToolKind.GROOVING;
    if (PLUNGING.contains(operation.kind()) || isBlade) {
      return TurnedWay.plunge(regions, operation.tool().sizeMm(), stock);
    }
    return switch (operation.kind()) {
      case SPOT, DRILL, COUNTERBORE, REAM -> alongAxis(TurnedWay.tipZMm(regions));
      case ROUGH_BORE, FINISH_BORE -> TurnedWay.inside(regions);
      case INSIDE_GROOVE -> insideGroove(regions);
      case FACE_GROOVE -> faceGroove(regions);
      default -> TurnedWay.outside(regions, side);
    };
  }

  private List<PointZr> face(List<CutRegion> regions) {
    double outer =
        regions.isEmpty()
            ? side.surfaceRMm(side.end() == WorkSide.End.FRONT ? 0 : side.part().lengthMm())
            : side.stockRMm();
    double inner = Math.min(outer, side.bar().boreMm() / 2);
    return List.of(new PointZr(0, outer + CLEAR_MM), new PointZr(0, inner));
  }

  private List<PointZr> alongAxis(double tipZMm) {
    double wayMm = operation.cut().travelMm() / Math.max(1, operation.cut().passCount());
    return List.of(new PointZr(Math.min(-CLEAR_MM, tipZMm - wayMm), 0), new PointZr(tipZMm, 0));
  }

  private List<PointZr> insideGroove(List<CutRegion> regions) {
    double top = top(regions);
    double from = from(regions);
    double to = Math.max(from, TurnedWay.tipZMm(regions) - operation.tool().sizeMm());
    double start = Math.max(0, Math.min(top, side.boreRMm(from)) - CLEAR_MM);
    return List.of(
        new PointZr(from, start),
        new PointZr(from, top),
        new PointZr(to, top),
        new PointZr(to, start));
  }

  private List<PointZr> faceGroove(List<CutRegion> regions) {
    double inner =
        regions.stream()
            .flatMap(region -> region.outline().stream())
            .mapToDouble(PointZr::rMm)
            .min()
            .orElse(0);
    return List.of(new PointZr(-CLEAR_MM, inner), new PointZr(TurnedWay.tipZMm(regions), inner));
  }

  private static double top(List<CutRegion> regions) {
    return regions.stream()
        .flatMap(region -> region.outline().stream())
        .mapToDouble(PointZr::rMm)
        .max()
        .orElse(0);
  }

  private static double from(List<CutRegion> regions) {
    return regions.stream()
        .flatMap(region -> region.outline().stream())
        .mapToDouble(PointZr::zMm)
        .min()
        .orElse(0);
  }

  private List<PointZr> feature() {
    FeaturePlace place =
        FeaturePlace.find(side, operation.featureId())
            .orElse(new FeaturePlace(0, 0, side.stockRMm(), 0, FeaturePlace.Place.OUTSIDE));
    return switch (place.place()) {
      case OUTSIDE -> outsideFeature(place);
      case INSIDE -> insideFeature(place);
      case FACE ->
          List.of(
              new PointZr(-CLEAR_MM, place.topRMm()), new PointZr(place.toZMm(), place.topRMm()));
    };
  }

  private List<PointZr> outsideFeature(FeaturePlace place) {
    double top = place.topRMm();
    double deep = top - place.depthMm();
    double out = side.stockRMm() + CLEAR_MM;
    return switch (operation.kind()) {
      case THREAD_TURN, BURNISH ->
          List.of(
              new PointZr(place.fromZMm() - 2 * CLEAR_MM, top), new PointZr(place.toZMm(), top));
      case MILL_SLOT, ENGRAVE ->
          List.of(
              new PointZr(place.fromZMm(), out),
              new PointZr(place.fromZMm(), deep),
              new PointZr(place.toZMm(), deep));
      case DEBURR ->
          List.of(
              new PointZr(place.middleZMm(), out),
              new PointZr(place.middleZMm(), top - chamferMm(place)));
      default -> List.of(new PointZr(place.middleZMm(), out), new PointZr(place.middleZMm(), deep));
    };
  }

  /** How deep the tip of a chamfering cutter of 90° goes; a brush stays on the surface. */
  private double chamferMm(FeaturePlace place) {
    boolean isBrush = operation.tool().family().edgesCount() == 1;
    return isBrush ? place.depthMm() : place.lengthMm() / 2 + CHAMFER_MM;
  }

  private List<PointZr> insideFeature(FeaturePlace place) {
    boolean onAxis =
        switch (operation.kind()) {
          case TAP, FORM_TAP, REAM, DEBURR, BURNISH -> true;
          default -> false;
        };
    double r = onAxis ? 0 : place.topRMm();
    return List.of(new PointZr(Math.min(0, place.fromZMm()) - 2, r), new PointZr(place.toZMm(), r));
  }
}
