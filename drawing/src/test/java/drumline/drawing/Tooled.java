package drumline.drawing;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.drawing.Walls.Stay;
import drumline.drawing.svg.Look;
import drumline.drawing.tooling.ToolSheet;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.PositionTools.Job;
import drumline.shape.setting.ToolTimes;
import drumline.shop.machine.Machine;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Invented work with a tool that suits each kind of it. */
public final class Tooled {

  private Tooled() {}

  public static ToolSheet body(DrawingUnits units, Look look) {
    return sheet(Walls.machine(6, 2), Works.valveBody(), units, look);
  }

  public static ToolSheet busy(Look look) {
    return sheet(Walls.machine(8, 3), Works.random(5, 8, 3, 38, ""), DrawingUnits.METRIC, look);
  }

  private static ToolSheet sheet(Machine machine, List<Stay> stays, DrawingUnits units, Look look) {
    Bar bar = Pieces.stainlessBar();
    Part part = Pieces.stainlessBody();
    List<Stay> suited = stays.stream().map(Tooled::suited).toList();
    Timeline timeline = Walls.timeline(machine, suited, 0.8);
    List<PositionTools> tools = new ArrayList<>();
    for (PositionTimeline position : timeline.positions()) {
      tools.add(tools(position, machine, suited, part, bar));
    }
    PositionTimeline back = timeline.back();
    if (back != null) {
      tools.add(tools(back, machine, suited, part, bar));
    }
    return new ToolSheet(
        part, bar, machine, timeline, Walls.states(machine, suited, bar, part), tools, units, look);
  }

  private static PositionTools tools(
      PositionTimeline position, Machine machine, List<Stay> stays, Part part, Bar bar) {
    List<Job> jobs = new ArrayList<>();
    for (OperationSpan span : position.operations()) {
      Operation operation =
          stays.stream()
              .map(Stay::operation)
              .filter(o -> o.id().equals(span.operationId()))
              .findFirst()
              .orElseThrow();
      ToolSlide slide = machine.findSlide(span.slideId()).orElseThrow();
      double clearS = span.elements().get(span.elements().size() - 1).startS();
      double cutS = span.elements().get(0).endS();
      ToolTimes times = new ToolTimes(span.startS(), cutS, clearS, span.endS());
      jobs.add(new Job(operation, slide, times));
    }
    return PositionTools.of(position.position(), jobs, part, bar);
  }

  private static Stay suited(Stay stay) {
    Operation o = stay.operation();
    Operation suited =
        new Operation(
            o.id(),
            o.featureId(),
            o.kind(),
            o.title(),
            o.end(),
            o.slides(),
            o.equipment(),
            o.condition(),
            tool(o.kind()),
            o.cut(),
            o.loads(),
            o.removes(),
            o.reason(),
            o.ruleId(),
            o.sources());
    return new Stay(suited, stay.slideId(), stay.startS(), stay.cutS(), stay.dwellS());
  }

  private static Tool tool(OperationKind kind) {
    ToolKind tool =
        switch (kind) {
          case FACE, ROUGH_TURN -> ToolKind.TURNING_ROUGH;
          case FINISH_TURN -> ToolKind.TURNING_FINISH;
          case FORM_TURN, GROOVE -> ToolKind.GROOVING;
          case INSIDE_GROOVE -> ToolKind.INSIDE_GROOVING;
          case FACE_GROOVE -> ToolKind.FACE_GROOVING;
          case SPOT -> ToolKind.SPOT_DRILL;
          case DRILL -> ToolKind.DRILL;
          case COUNTERBORE -> ToolKind.COUNTERBORE;
          case ROUGH_BORE, FINISH_BORE -> ToolKind.BORING;
          case REAM -> ToolKind.REAMER;
          case TAP -> ToolKind.TAP;
          case FORM_TAP -> ToolKind.FORM_TAP;
          case THREAD_TURN -> ToolKind.THREADING;
          case THREAD_ROLL -> ToolKind.THREAD_ROLLING;
          case KNURL -> ToolKind.KNURLING;
          case CROSS_DRILL, FACE_DRILL -> ToolKind.DRIVEN_DRILL;
          case CROSS_TAP, FACE_TAP -> ToolKind.DRIVEN_TAP;
          case MILL_FLATS -> ToolKind.SIDE_CUTTER;
          case POLYGON_TURN -> ToolKind.POLYGON_CUTTER;
          case MILL_SLOT -> ToolKind.END_MILL;
          case SLOT -> ToolKind.SLOTTING;
          case ENGRAVE -> ToolKind.ENGRAVING;
          case DEBURR -> ToolKind.DEBURRING;
          case BURNISH -> ToolKind.BURNISHING;
          case CUT_OFF -> ToolKind.CUT_OFF;
        };
    double leadDeg = kind == OperationKind.DRILL ? 140 : 93;
    double sizeMm = tool == ToolKind.SIDE_CUTTER ? 40 : tool == ToolKind.POLYGON_CUTTER ? 80 : 3;
    ToolFamily family =
        new ToolFamily(
            kind.words() + " tool",
            tool,
            drumline.shop.material.ToolMaterial.CARBIDE_COATED,
            0.1,
            100,
            0.4,
            leadDeg,
            2,
            2,
            5,
            BigDecimal.TEN,
            BigDecimal.ZERO,
            "EUR",
            5,
            "invented");
    return new Tool(family, sizeMm, BigDecimal.TEN);
  }
}
