package drumline.drawing.tooling;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.tooling.BoxClip.Corner;
import drumline.drawing.view.Arrow;
import drumline.drawing.view.ViewFrame;
import drumline.shape.setting.SetTool;
import drumline.shape.tool.ToolOutline;
import drumline.shape.tool.ToolPart;
import drumline.shape.tool.ToolPart.Role;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws tools where they end their cuts. */
final class ToolShapes {

  private static final double ARROW_MM = 8;

  private final SvgPen pen;
  private final ViewFrame frame;
  private final BoxClip clip;

  ToolShapes(SvgPen pen, ViewFrame frame, Box room) {
    this.pen = pen;
    this.frame = frame;
    this.clip = new BoxClip(room);
  }

  /** Side of the axis that a cross tool is drawn on. */
  enum Half {
    /** Above. */
    UPPER,
    /** Below. */
    LOWER
  }

  /** A tool with its body and the direction of its travel. */
  void whole(SetTool tool, Half half) {
    boolean isAlong = tool.tool().outline().side() == ToolOutline.Side.ALONG;
    pen.open("tool", "data-operation", tool.operation().id());
    List<ToolPart> parts = atEnd(tool);
    for (ToolPart part : parts) {
      List<Corner> corners = corners(part, half);
      boolean isFilled = part.role() != Role.EDGE || !isAlong;
      if (isFilled) {
        pen.path(part.role() == Role.EDGE ? "tool-edge" : "plate", area(clip.area(corners)));
      }
      pen.path(part.role() == Role.EDGE ? "tool-line" : "thin", clip.lines(corners));
      if (part.role() == Role.EDGE && isAlong && isFluted(tool)) {
        flutes(corners);
      }
    }
    arrow(tool, parts, half);
    pen.close();
  }

  /** Only the cutting part of a tool that follows on the same slide. */
  void other(SetTool tool, Half half) {
    pen.open("tool", "data-operation", tool.operation().id());
    for (ToolPart part : atEnd(tool)) {
      if (part.role() == Role.EDGE) {
        pen.path("tool-other", clip.lines(corners(part, half)));
      }
    }
    pen.close();
  }

  /** Where a leader points: the middle of what is seen of the cutting part. */
  Optional<Corner> anchor(SetTool tool, Half half) {
    return atEnd(tool).stream()
        .filter(part -> part.role() == Role.EDGE)
        .map(part -> clip.area(corners(part, half)))
        .filter(area -> !area.isEmpty())
        .map(ToolShapes::middle)
        .findFirst();
  }

  private static List<ToolPart> atEnd(SetTool tool) {
    return tool.tool().at(tool.tool().path().end());
  }

  private static boolean isFluted(SetTool tool) {
    return switch (tool.operation().tool().family().kind()) {
      case DRILL, DRIVEN_DRILL, SPOT_DRILL, REAMER, COUNTERBORE -> true;
      default -> false;
    };
  }

  /** A hint of flutes: slanted lines across the cutting part, one for each diameter. */
  private void flutes(List<Corner> corners) {
    double left = corners.stream().mapToDouble(Corner::x).min().orElse(0);
    double right = corners.stream().mapToDouble(Corner::x).max().orElse(0);
    double top = corners.stream().mapToDouble(Corner::y).min().orElse(0);
    double bottom = corners.stream().mapToDouble(Corner::y).max().orElse(0);
    double pitch = Math.max(2.5, bottom - top);
    BoxClip body = new BoxClip(new Box(left, top, right - left - pitch / 2, bottom - top));
    SvgPath lines = new SvgPath();
    for (double x = left; x < right; x += pitch) {
      SvgPath one = new SvgPath();
      body.line(one, new Corner(x, bottom), new Corner(x + 0.7 * pitch, top));
      if (!one.isEmpty()) {
        clip.line(lines, new Corner(x, bottom), new Corner(x + 0.7 * pitch, top));
      }
    }
    pen.path("thin", lines);
  }

  private void arrow(SetTool tool, List<ToolPart> parts, Half half) {
    List<PointZr> way = tool.tool().path().cut();
    if (way.size() < 2) {
      return;
    }
    PointZr from = way.get(way.size() - 2);
    PointZr to = way.get(way.size() - 1);
    double length = Math.hypot(to.zMm() - from.zMm(), to.rMm() - from.rMm());
    if (length < 1e-9) {
      return;
    }
    double ux = (to.zMm() - from.zMm()) / length;
    double uy = (to.rMm() - from.rMm()) / length * (half == Half.UPPER ? -1 : 1);
    largest(parts, half)
        .ifPresent(
            middle -> {
              double x = middle.x();
              double y = middle.y();
              double h = ARROW_MM / 2;
              pen.line("wide", x - ux * h, y - uy * h, x + ux * (h - 1), y + uy * (h - 1));
              Arrow.draw(pen, x - ux * h, y - uy * h, x + ux * h, y + uy * h);
            });
  }

  /** Middle of the largest part of the body that is seen, or else of the cutting part. */
  private Optional<Corner> largest(List<ToolPart> parts, Half half) {
    List<Corner> best = List.of();
    double most = 0;
    for (ToolPart part : parts) {
      List<Corner> area = clip.area(corners(part, half));
      double size = part.role() == Role.EDGE ? 1e-6 : size(area);
      if (!area.isEmpty() && size > most) {
        most = size;
        best = area;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(middle(best));
  }

  private static double size(List<Corner> area) {
    double twice = 0;
    for (int i = 0; i < area.size(); i++) {
      Corner a = area.get(i);
      Corner b = area.get((i + 1) % area.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  private static Corner middle(List<Corner> area) {
    double x = area.stream().mapToDouble(Corner::x).average().orElse(0);
    double y = area.stream().mapToDouble(Corner::y).average().orElse(0);
    return new Corner(x, y);
  }

  private List<Corner> corners(ToolPart part, Half half) {
    List<Corner> corners = new ArrayList<>();
    for (PointZr point : part.outline()) {
      double y = half == Half.UPPER ? frame.up(point.rMm()) : frame.down(point.rMm());
      corners.add(new Corner(frame.x(point.zMm()), y));
    }
    return corners;
  }

  private static SvgPath area(List<Corner> corners) {
    SvgPath path = new SvgPath();
    for (int i = 0; i < corners.size(); i++) {
      if (i == 0) {
        path.move(corners.get(i).x(), corners.get(i).y());
      } else {
        path.line(corners.get(i).x(), corners.get(i).y());
      }
    }
    return corners.isEmpty() ? path : path.close();
  }
}
