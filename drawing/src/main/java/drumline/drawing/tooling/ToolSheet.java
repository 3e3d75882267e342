package drumline.drawing.tooling;

import drumline.cycle.timeline.Timeline;
import drumline.drawing.DrawingUnits;
import drumline.drawing.svg.Look;
import drumline.shape.setting.PositionTools;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.machine.Machine;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;

/**
 * What a tool layout shows.
 *
 * @param part the piece
 * @param bar the stock
 * @param machine the machine
 * @param timeline the layout on the clock
 * @param states the workpiece as it leaves each position
 * @param tools tools of each position, in the order of travel
 * @param units units of lengths, speeds and feeds
 * @param look where it will be seen
 */
public record ToolSheet(
    Part part,
    Bar bar,
    Machine machine,
    Timeline timeline,
    WorkpieceStates states,
    List<PositionTools> tools,
    DrawingUnits units,
    Look look) {

  /** Copies the list. */
  public ToolSheet {
    tools = List.copyOf(tools);
  }
}
