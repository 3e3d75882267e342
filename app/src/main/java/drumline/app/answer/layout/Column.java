package drumline.app.answer.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A position on the wall.
 *
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param title as a reader names it
 * @param place drum or pick-up
 * @param busyS end of the last thing done
 * @param slackS time left until it would set the cycle
 * @param isGoverning whether it sets the cycle
 * @param pictureSvg the workpiece as it leaves, or null
 * @param removedMm3 what was taken here
 * @param spindle the spindle's conditions
 * @param fixed other things that take time
 * @param lanes slides
 */
public record Column(
    int position,
    String title,
    String place,
    double busyS,
    double slackS,
    boolean isGoverning,
    @Nullable String pictureSvg,
    @Nullable Double removedMm3,
    List<SpindleStretch> spindle,
    List<Fixed> fixed,
    List<Lane> lanes) {
  /** Copies the lists. */
  public Column {
    spindle = List.copyOf(spindle);
    fixed = List.copyOf(fixed);
    lanes = List.copyOf(lanes);
  }

  /**
   * A stretch of the spindle's time.
   *
   * @param kind keep or change
   * @param condition condition held, or the one it changes to
   * @param revPerMin speed
   * @param startS begin
   * @param endS end
   */
  public record SpindleStretch(
      String kind, String condition, double revPerMin, double startS, double endS) {}

  /**
   * Something that the machine does without a tool.
   *
   * @param title what
   * @param startS begin
   * @param endS end
   */
  public record Fixed(String title, double startS, double endS) {}
}
