package drumline.cycle.timeline;

import java.util.List;

/**
 * What happens at one position, or at the pick-up spindle, in one cycle. Times at a position count
 * from the end of the index, times of the pick-up spindle from the begin of gripping.
 *
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param operations operations by start
 * @param spindle the spindle's conditions, in order
 * @param fixed other things that take time here: bar feed, grip, cut-off as the pick-up sees it,
 *     eject, in order
 * @param busyS end of the last thing done here
 * @param slackS time left until the position would set the cycle
 */
public record PositionTimeline(
    int position,
    List<OperationSpan> operations,
    List<SpindleSpan> spindle,
    List<FixedSpan> fixed,
    double busyS,
    double slackS) {

  /** Copies the lists. */
  public PositionTimeline {
    operations = List.copyOf(operations);
    spindle = List.copyOf(spindle);
    fixed = List.copyOf(fixed);
  }

  /**
   * Something that the machine does here without a tool.
   *
   * @param title e.g. {@code feed bar to stop}
   * @param startS begin
   * @param endS end
   */
  public record FixedSpan(String title, double startS, double endS) {}
}
