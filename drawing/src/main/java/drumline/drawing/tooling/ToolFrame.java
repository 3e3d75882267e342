package drumline.drawing.tooling;

import drumline.shape.section.HalfSection;
import drumline.shape.setting.SetTool;
import drumline.shape.workpiece.PositionState;
import java.util.List;

/**
 * One position's frame.
 *
 * @param title position, as a setter names it
 * @param state time and spindle
 * @param governs whether it sets the cycle
 * @param work the workpiece as it leaves, with what was removed here
 * @param hold what holds the work
 * @param holding collet nose or jaws
 * @param tools tools in the order of their starts
 * @param rows their lines in the table
 */
record ToolFrame(
    String title,
    String state,
    Governs governs,
    PositionState work,
    Hold hold,
    List<HalfSection> holding,
    List<SetTool> tools,
    List<ToolRow> rows) {

  ToolFrame {
    holding = List.copyOf(holding);
    tools = List.copyOf(tools);
    rows = List.copyOf(rows);
  }

  /** Whether a position sets the cycle. */
  enum Governs {
    /** It does. */
    YES,
    /** It waits for another. */
    NO
  }

  /** Which spindle holds the work. */
  enum Hold {
    /** A spindle of the drum: the work stands out to the left. */
    DRUM,
    /** The pick-up spindle: it stands out to the right. */
    PICK_UP
  }
}
