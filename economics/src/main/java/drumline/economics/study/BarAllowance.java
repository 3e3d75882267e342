package drumline.economics.study;

import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What a piece takes from the bar beyond its own length, read off the route: how far facing reaches
 * before the front face and behind the back face, and the width of the cut-off tool.
 *
 * @param facingMm faced off, both ends together
 * @param kerfMm width of the cut-off tool; 0 when the route has no cut-off
 */
record BarAllowance(double facingMm, double kerfMm) {

  static BarAllowance of(Route route, double pieceLengthMm) {
    double front = -zOf(route, OperationKind.FACE).min().orElse(0);
    double back = zOf(route, OperationKind.FACE).max().orElse(pieceLengthMm) - pieceLengthMm;
    double kerf =
        route.operations().stream()
            .filter(operation -> operation.kind() == OperationKind.CUT_OFF)
            .mapToDouble(operation -> operation.tool().sizeMm())
            .max()
            .orElse(0);
    return new BarAllowance(Math.max(0, front) + Math.max(0, back), kerf);
  }

  private static DoubleStream zOf(Route route, OperationKind kind) {
    return route.operations().stream()
        .filter(operation -> operation.kind() == kind)
        .map(Operation::removes)
        .flatMap(List::stream)
        .flatMap(region -> region.outline().stream())
        .mapToDouble(PointZr::zMm);
  }
}
