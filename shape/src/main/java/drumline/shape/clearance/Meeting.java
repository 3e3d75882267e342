package drumline.shape.clearance;

import java.util.Locale;

/**
 * Two things that would be in one place.
 *
 * @param kind what meets
 * @param position position; one more than the last for the pick-up spindle
 * @param one the tool, and which part of it
 * @param other what it meets
 * @param atS when, from the end of the index; of back-working from the begin of gripping
 * @param fromZMm where the shared place begins along the axis
 * @param toZMm where it ends
 * @param nearRMm its least distance from the axis
 * @param farRMm its greatest distance from the axis
 * @param areaMm2 its area in the section
 */
public record Meeting(
    Kind kind,
    int position,
    String one,
    String other,
    double atS,
    double fromZMm,
    double toZMm,
    double nearRMm,
    double farRMm,
    double areaMm2) {

  /** What can meet. */
  public enum Kind {
    /** A body or holder and the work. */
    TOOL_AND_WORK,
    /** A cutting part and what must remain of the piece. */
    EDGE_AND_PIECE,
    /** A tool and the collet or the pick-up jaws. */
    TOOL_AND_HOLDING,
    /** Two tools. */
    TOOLS
  }

  /** As a setter would say it. */
  public String words() {
    return String.format(
        Locale.ROOT,
        "position %d at %.2f s: %s meets %s; z %.2f to %.2f mm, r %.2f to %.2f mm,"
            + " %.2f mm² of the section",
        position,
        atS,
        one,
        other,
        fromZMm,
        toZMm,
        nearRMm,
        farRMm,
        areaMm2);
  }
}
