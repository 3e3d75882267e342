package drumline.drawing.tooling;

import drumline.cycle.timeline.Timeline;
import drumline.drawing.DrawingUnits;
import drumline.shape.setting.SetTool;
import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A tool's line in the table under its frame.
 *
 * @param number number of the tool
 * @param title what it does
 * @param tool what it is, with its dimensions
 * @param travel direction of travel while it cuts, as arrows
 * @param figures speed, cutting speed, feed, time, overhang
 */
record ToolRow(String number, String title, String tool, String travel, List<String> figures) {

  static ToolRow of(SetTool tool, Timeline timeline, DrawingUnits units) {
    Operation operation = tool.operation();
    CutSpec cut = operation.cut();
    double revPerMin =
        timeline.findOperation(operation.id()).map(span -> span.spindleRevPerMin()).orElse(0.0);
    double speedMPerMin = cut.cuttingSpeedMPerMin(revPerMin);
    List<String> figures = new ArrayList<>();
    figures.add(speed(operation, revPerMin));
    figures.add(speedMPerMin > 0 ? units.speed(speedMPerMin) : "–");
    figures.add(cut.feedMmPerRev() > 0 ? units.feed(cut.feedMmPerRev()) : "–");
    figures.add(seconds(tool.times().endS() - tool.times().startS()));
    figures.add(tool.tool().overhangMm() > 0 ? units.coarse(tool.tool().overhangMm()) : "–");
    return new ToolRow(tool.number(), operation.title(), name(tool, units), travel(tool), figures);
  }

  private static String speed(Operation operation, double revPerMin) {
    double driven = operation.cut().toolRevPerMin();
    if (driven > 0) {
      return String.format(Locale.ROOT, "%.0f*", driven);
    }
    return operation.condition() == SpindleCondition.HELD || revPerMin == 0
        ? "held"
        : String.format(Locale.ROOT, "%.0f", revPerMin);
  }

  private static String name(SetTool tool, DrawingUnits units) {
    String dimensions =
        tool.tool().outline().dimensions().stream()
            .filter(dimension -> dimension.value() > 0)
            .map(dimension -> words(dimension, units))
            .collect(Collectors.joining(" "));
    return tool.operation().tool().family().name() + ", " + tool.slide().id() + "  " + dimensions;
  }

  private static String words(Dimension dimension, DrawingUnits units) {
    return dimension.unit() == Dimension.Unit.DEG
        ? dimension.symbol() + String.format(Locale.ROOT, " %.0f°", dimension.value())
        : dimension.symbol() + " " + units.length(dimension.value());
  }

  private static String seconds(double valueS) {
    return String.format(Locale.ROOT, "%.2f", valueS);
  }

  /** Up to two arrows: the first and the last direction of the cut. */
  private static String travel(SetTool tool) {
    List<PointZr> way = tool.tool().path().cut();
    if (way.size() < 2) {
      return "";
    }
    String first = arrow(way.get(0), way.get(1));
    String last = arrow(way.get(way.size() - 2), way.get(way.size() - 1));
    return first.equals(last) ? first : first + last;
  }

  private static String arrow(PointZr from, PointZr to) {
    double along = to.zMm() - from.zMm();
    double across = to.rMm() - from.rMm();
    if (Math.abs(along) >= Math.abs(across)) {
      return along >= 0 ? "→" : "←";
    }
    return across >= 0 ? "↑" : "↓";
  }
}
