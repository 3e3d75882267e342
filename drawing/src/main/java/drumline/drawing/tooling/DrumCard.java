package drumline.drawing.tooling;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.SpindleSpan;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.SetTool;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.OperationKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is said of one position beside the drum.
 *
 * @param title position
 * @param lines spindle, then each slide with its tools' numbers
 */
record DrumCard(String title, List<String> lines) {

  static final double LINE_MM = 4;

  private static final double SIZE = 2.6;

  DrumCard {
    lines = List.copyOf(lines);
  }

  static DrumCard of(
      String title, PositionTimeline time, PositionTools tools, List<ToolSlide> slides) {
    List<String> lines = new ArrayList<>();
    spindle(time).ifPresent(lines::add);
    for (ToolSlide slide : slides) {
      lines.add(slide(slide, tools));
    }
    if (parts(tools)) {
      lines.add("parts the piece, then feeds the bar out");
    }
    return new DrumCard(title, lines);
  }

  private static Optional<String> spindle(PositionTimeline time) {
    Set<String> speeds = new LinkedHashSet<>();
    Set<String> others = new LinkedHashSet<>();
    for (SpindleSpan span : time.spindle()) {
      if (span.kind() == SpindleSpan.Kind.KEEP) {
        (span.revPerMin() > 0 ? speeds : others).add(ToolFrames.spindle(span));
      }
    }
    List<String> words = new ArrayList<>();
    if (!speeds.isEmpty()) {
      words.add(String.join(", ", speeds) + " rev/min");
    }
    words.addAll(others);
    return words.isEmpty() ? Optional.empty() : Optional.of("spindle " + String.join(", ", words));
  }

  static boolean parts(PositionTools tools) {
    return tools.tools().stream()
        .anyMatch(tool -> tool.operation().kind() == OperationKind.CUT_OFF);
  }

  /** Whether a slide carries a driven tool here. */
  static boolean isDriven(ToolSlide slide, PositionTools tools) {
    return on(slide, tools).stream().anyMatch(tool -> tool.operation().cut().toolRevPerMin() > 0);
  }

  private static List<SetTool> on(ToolSlide slide, PositionTools tools) {
    return tools.tools().stream().filter(tool -> tool.slide().id().equals(slide.id())).toList();
  }

  private static String slide(ToolSlide slide, PositionTools tools) {
    String where =
        switch (slide.kind()) {
          case END -> "facing";
          case CROSS -> "from the side";
          case BACK -> "cut-off side";
        };
    String numbers =
        on(slide, tools).stream().map(SetTool::number).collect(Collectors.joining(", "));
    String driven = isDriven(slide, tools) ? ", driven" : "";
    return slide.id() + " (" + where + "): " + (numbers.isEmpty() ? "empty" : numbers + driven);
  }

  double heightMm() {
    return LINE_MM * (lines.size() + 1) + 1;
  }

  void draw(SvgPen pen, double x, double y, double width, Anchor anchor) {
    pen.text("bold", x, y + 3, 3.2, anchor, title);
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      double size = Math.min(SIZE, width / TextWidth.of(line + " ", 1));
      pen.text("", x, y + 3 + LINE_MM * (i + 1), size, anchor, line);
    }
  }
}
