package drumline.shop.machine;

/**
 * How bars come into the machine.
 *
 * @param capacityMm greatest round bar
 * @param barLengthMm longest bar it loads
 * @param remnantMm shortest length of bar left when a new one is needed
 * @param feedOutS time to open, push to the stop and close, after cut-off
 * @param barChangeS time that the drum stands for one spindle's new bar
 * @param loading whether the drum stands for a new bar
 */
public record BarFeed(
    double capacityMm,
    double barLengthMm,
    double remnantMm,
    double feedOutS,
    double barChangeS,
    Loading loading) {

  /** When new bars are loaded. */
  public enum Loading {
    /** While the others cut; the drum does not stand. */
    IN_SHADOW,
    /** The drum stands. */
    STOPPED
  }
}
