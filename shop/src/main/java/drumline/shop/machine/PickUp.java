package drumline.shop.machine;

import java.util.List;

/**
 * Pick-up spindles that take the piece at cut-off and carry it to back-working tools.
 *
 * @param spindleCount pick-up spindles, 1 or 2
 * @param highestRevPerMin fastest speed
 * @param powerKw power of one
 * @param torqueNm torque of one
 * @param gripN total radial grip
 * @param gripS time to come forward, match speed and grip, after the index
 * @param retractS time to draw the piece away after cut-off and reach the back tools
 * @param ejectS time to put the piece out
 * @param returnS time to swing back in front of the last position
 * @param runUpRevPerMinPerS change of speed in a second
 * @param orientS time to stop at an angle and hold
 * @param slides back-working tool blocks
 */
public record PickUp(
    int spindleCount,
    double highestRevPerMin,
    double powerKw,
    double torqueNm,
    double gripN,
    double gripS,
    double retractS,
    double ejectS,
    double returnS,
    double runUpRevPerMinPerS,
    double orientS,
    List<ToolSlide> slides) {

  /** The same with another number of spindles that take turns. */
  public PickUp withSpindleCount(int newSpindleCount) {
    return new PickUp(
        newSpindleCount,
        highestRevPerMin,
        powerKw,
        torqueNm,
        gripN,
        gripS,
        retractS,
        ejectS,
        returnS,
        runUpRevPerMinPerS,
        orientS,
        slides);
  }

  /** Copies the list. */
  public PickUp {
    slides = List.copyOf(slides);
  }
}
