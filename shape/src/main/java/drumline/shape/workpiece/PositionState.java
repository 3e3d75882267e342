package drumline.shape.workpiece;

import drumline.shape.section.HalfSection;
import java.util.List;

/**
 * The workpiece as it leaves a position.
 *
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param workpiece what leaves: the front of the bar, or the piece alone after cut-off
 * @param removed what was taken here, together
 * @param removals what each operation took, in order
 * @param hold what holds it
 */
public record PositionState(
    int position, HalfSection workpiece, HalfSection removed, List<Removal> removals, Hold hold) {

  /** Copies the list. */
  public PositionState {
    removals = List.copyOf(removals);
  }

  /** What holds the workpiece. */
  public enum Hold {
    /** It is still part of the bar. */
    IN_BAR,
    /** It is parted. */
    PARTED
  }
}
