package drumline.drawing.tooling;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.SpindleSpan;
import drumline.drawing.tooling.ToolFrame.Governs;
import drumline.drawing.tooling.ToolFrame.Hold;
import drumline.shape.section.HalfSection;
import drumline.shape.setting.Holding;
import drumline.shape.setting.PositionTools;
import drumline.shape.workpiece.PositionState;
import drumline.shop.operation.OperationKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Gathers what each frame shows. */
final class ToolFrames {

  private final ToolSheet sheet;

  ToolFrames(ToolSheet sheet) {
    this.sheet = sheet;
  }

  /** Frames in the order of travel; back-working last, where something is done there. */
  List<ToolFrame> frames() {
    List<ToolFrame> frames = new ArrayList<>();
    for (PositionTools tools : sheet.tools()) {
      boolean isBack = tools.position() > sheet.machine().lastPosition();
      if (!isBack || !tools.tools().isEmpty()) {
        sheet
            .states()
            .findPosition(tools.position())
            .ifPresent(state -> frames.add(frame(tools, state, isBack ? Hold.PICK_UP : Hold.DRUM)));
      }
    }
    return frames;
  }

  private ToolFrame frame(PositionTools tools, PositionState state, Hold hold) {
    PositionTimeline time = timeline(tools.position());
    boolean governs = sheet.timeline().governing() == tools.position();
    return new ToolFrame(
        hold == Hold.PICK_UP ? "back-working" : "position " + tools.position(),
        words(time),
        governs ? Governs.YES : Governs.NO,
        state,
        hold,
        holding(tools, hold),
        tools.tools(),
        tools.tools().stream()
            .map(tool -> ToolRow.of(tool, sheet.timeline(), sheet.units()))
            .toList());
  }

  private PositionTimeline timeline(int position) {
    PositionTimeline back = sheet.timeline().back();
    return back != null && position > sheet.timeline().positions().size()
        ? back
        : sheet.timeline().positions().get(position - 1);
  }

  private List<HalfSection> holding(PositionTools tools, Hold hold) {
    List<HalfSection> holding = new ArrayList<>();
    boolean parts =
        tools.tools().stream().anyMatch(tool -> tool.operation().kind() == OperationKind.CUT_OFF);
    if (hold == Hold.DRUM) {
      holding.add(Holding.colletNose(sheet.bar(), cutOffToMm()));
    }
    if (hold == Hold.PICK_UP || (parts && sheet.machine().pickUp() != null)) {
      Holding.jaws(sheet.part()).ifPresent(holding::add);
    }
    return holding;
  }

  /** Collet side of the cut-off: what the first position's bar shows less its stub. */
  double cutOffToMm() {
    return sheet.states().cutOffToZMm();
  }

  private String words(PositionTimeline time) {
    StringBuilder words = new StringBuilder();
    words.append(String.format(Locale.ROOT, "%.2f s busy", time.busyS()));
    List<String> spindle = new ArrayList<>();
    for (SpindleSpan span : time.spindle()) {
      String one = spindle(span);
      if (span.kind() == SpindleSpan.Kind.KEEP
          && (spindle.isEmpty() || !spindle.get(spindle.size() - 1).equals(one))) {
        spindle.add(one);
      }
    }
    if (!spindle.isEmpty()) {
      words.append(" · spindle ").append(String.join(", ", spindle));
    }
    return words.toString();
  }

  /** What a spindle does in a stretch of time, in a word or a speed. */
  static String spindle(SpindleSpan span) {
    return switch (span.condition()) {
      case HELD -> "held";
      case C_AXIS -> "C axis";
      case TURNING, TURNING_ANY ->
          span.revPerMin() > 0 ? String.format(Locale.ROOT, "%.0f", span.revPerMin()) : "free";
    };
  }
}
