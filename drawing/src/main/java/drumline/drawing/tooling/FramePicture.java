package drumline.drawing.tooling;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.tooling.BoxClip.Corner;
import drumline.drawing.tooling.ToolFrame.Hold;
import drumline.drawing.tooling.ToolShapes.Half;
import drumline.drawing.view.OutsideView;
import drumline.drawing.view.SectionView;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.HalfSection;
import drumline.shape.setting.SetTool;
import drumline.shape.tool.ToolOutline;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The workpiece of one frame with its tools. */
final class FramePicture {

  private static final double BALLOON_MM = 4.5;
  private static final double FREE_MM = 5;
  private static final double TOOL_ROOM_MM = 40;
  private static final double BEHIND_MM = 9;

  private final SvgPen pen;
  private final ToolFrame content;
  private final Box room;
  private final ViewFrame frame;
  private final ToolShapes shapes;
  private final List<String> crossSlides;

  FramePicture(SvgPen pen, ToolFrame content, Box room, double scale, HalfSection bar) {
    this.pen = pen;
    this.content = content;
    this.room = room;
    this.crossSlides = crossSlides(content);
    this.frame = frame(scale, bar);
    this.shapes = new ToolShapes(pen, frame, room);
  }

  /** Length on paper that one mm of the piece may take in a room of this size. */
  static double roomRatio(Box room, HalfSection bar) {
    double along = room.width() - TOOL_ROOM_MM - BEHIND_MM;
    double across = 0.62 * room.height();
    return Math.min(along / (bar.toZMm() - bar.fromZMm()), across / (2 * bar.outerRMm()));
  }

  private ViewFrame frame(double scale, HalfSection bar) {
    double length = (bar.toZMm() - bar.fromZMm()) * scale;
    double rest = room.width() - length;
    double before =
        content.hold() == Hold.DRUM
            ? Math.min(rest - BEHIND_MM, TOOL_ROOM_MM + (rest - BEHIND_MM - TOOL_ROOM_MM) / 2)
            : Math.max(BEHIND_MM, (rest - TOOL_ROOM_MM) / 2);
    double x0 = room.x() + before - bar.fromZMm() * scale;
    double radius = bar.outerRMm() * scale;
    boolean below = crossSlides.size() > 1;
    double axisY =
        below
            ? room.y() + room.height() / 2
            : room.bottom() - Math.max(radius + FREE_MM, 0.27 * room.height());
    return new ViewFrame(x0, axisY, scale);
  }

  /** Slides whose tools come across the axis, in the order of the machine's names. */
  private static List<String> crossSlides(ToolFrame content) {
    Set<String> slides = new LinkedHashSet<>();
    content.tools().stream()
        .filter(tool -> tool.tool().outline().side() == ToolOutline.Side.ACROSS)
        .filter(tool -> tool.slide().kind() != SlideKind.BACK)
        .map(tool -> tool.slide().id())
        .sorted()
        .forEach(slides::add);
    return new ArrayList<>(slides);
  }

  void draw() {
    pen.rect("frame", room);
    pen.open("holding");
    for (HalfSection body : content.holding()) {
      boolean isJaws = body.fromZMm() < 0;
      holding(body, isJaws && content.hold() == Hold.DRUM ? "at-other-time" : "thin");
    }
    pen.close();
    work();
    Balloons upper = new Balloons();
    Balloons lower = new Balloons();
    Balloons facing = new Balloons();
    Set<String> drawn = new LinkedHashSet<>();
    for (SetTool tool : bySize()) {
      Half half = half(tool);
      if (drawn.add(tool.slide().id())) {
        shapes.whole(tool, half);
      } else {
        shapes.other(tool, half);
      }
      Balloons wanted =
          tool.tool().outline().side() == ToolOutline.Side.ALONG
              ? facing
              : half == Half.UPPER ? upper : lower;
      shapes.anchor(tool, half).ifPresent(at -> wanted.add(tool.number(), at));
    }
    axis();
    upper.row(pen, room, room.y() + BALLOON_MM);
    lower.row(pen, room, room.bottom() - BALLOON_MM);
    facing.column(pen, room, content.hold() == Hold.DRUM ? room.x() + 6 : room.right() - 6);
  }

  /** The tool that works longest on its slide is drawn whole; tools drawn first lie below. */
  private List<SetTool> bySize() {
    return content.tools().stream()
        .sorted(Comparator.comparingDouble(tool -> tool.times().startS() - tool.times().endS()))
        .toList();
  }

  private Half half(SetTool tool) {
    boolean isSecond =
        tool.tool().outline().side() == ToolOutline.Side.ACROSS
            && crossSlides.indexOf(tool.slide().id()) == 1;
    return isSecond ? Half.LOWER : Half.UPPER;
  }

  private void work() {
    HalfSection leaves = content.work().workpiece();
    HalfSection removed = content.work().removed();
    pen.open("work");
    SectionView.draw(pen, leaves, frame, HatchKind.FINE_SECTION);
    OutsideView.draw(pen, leaves.shadow(), frame);
    SectionView.hatch(pen, removed, frame, HatchKind.REMOVED);
    pen.path("edge-of-removed", SectionView.outline(removed, frame));
    pen.close();
  }

  private void axis() {
    double from = Math.max(room.x() + 1, frame.x(content.work().workpiece().fromZMm()) - 4);
    double to = Math.min(room.right() - 1, frame.x(content.work().workpiece().toZMm()) + 4);
    pen.line("long-dash-dot", from, frame.axisY(), to, frame.axisY());
  }

  private void holding(HalfSection body, String line) {
    BoxClip clip = new BoxClip(room);
    for (List<PointZr> ring : body.outlines()) {
      for (Half half : Half.values()) {
        List<Corner> corners = new ArrayList<>();
        for (PointZr point : ring) {
          double y = half == Half.UPPER ? frame.up(point.rMm()) : frame.down(point.rMm());
          corners.add(new Corner(frame.x(point.zMm()), y));
        }
        pen.path(line, clip.lines(corners));
      }
    }
  }
}
