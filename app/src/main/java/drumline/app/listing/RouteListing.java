package drumline.app.listing;

import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.Locale;

/** A route as text. */
public final class RouteListing {
  private RouteListing() {}

  /** Operations with tool, data, time and loads; with their reasons if asked. */
  public static String text(Route route, boolean reasons) {
    TextTable table =
        new TextTable(
            "id",
            "operation",
            "tool",
            "at",
            ">rev/min",
            ">m/min",
            ">mm/rev",
            ">s",
            ">N",
            ">Nm",
            ">kW");
    route.operations().forEach(operation -> row(table, operation));
    StringBuilder text = new StringBuilder(table.text());
    text.append(
        String.format(
            Locale.ROOT,
            "%d operations, %d orders, %d pair rules. Each alone at its fastest; the machine and"
                + " what cuts beside it may slow it.%n",
            route.operations().size(),
            route.orders().size(),
            route.pairs().size()));
    if (reasons) {
      text.append('\n').append(reasons(route));
    }
    return text.toString();
  }

  private static void row(TextTable table, Operation operation) {
    CutSpec cut = operation.cut();
    boolean turning = operation.condition() == SpindleCondition.TURNING;
    double n = turning ? cut.highestRevPerMin() : cut.toolRevPerMin();
    double power = turning ? operation.loads().spindlePowerKw(n) : operation.loads().toolPowerKw();
    table.row(
        operation.id(),
        operation.title(),
        operation.tool().label(),
        operation.end().name().toLowerCase(Locale.ROOT),
        number(n, 0),
        number(cut.cuttingSpeedMPerMin(n), 0),
        number(cut.feedMmPerRev(), 3),
        number(cut.cutS(n), 2),
        number(operation.loads().cuttingForceN(), 0),
        number(operation.loads().torqueNm(), 1),
        number(power, 2));
  }

  private static String reasons(Route route) {
    StringBuilder text = new StringBuilder();
    for (Operation operation : route.operations()) {
      text.append(operation.id()).append(": ").append(operation.reason()).append('\n');
      for (OrderRule order : route.orders()) {
        if (order.afterId().equals(operation.id())) {
          text.append("    after ").append(order.beforeId()).append(": ");
          text.append(order.reason()).append('\n');
        }
      }
    }
    return text.toString();
  }

  private static String number(double value, int decimals) {
    return value == 0 ? "–" : String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
