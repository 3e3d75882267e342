package drumline.sheets.content.process;

import drumline.sheets.content.plain.Tone;
import java.util.List;

/**
 * What happens at one position.
 *
 * @param title e.g. {@code Position 3}, or {@code Pick-up spindle}
 * @param busyS time until the last thing is done here
 * @param slackS time left until it would set the cycle
 * @param other what the machine does here without a tool, or empty
 * @param operations operations by start
 * @param tone marked where the position governs
 */
public record PositionSheet(
    String title,
    double busyS,
    double slackS,
    String other,
    List<OperationRow> operations,
    Tone tone) {

  /** Copies the list. */
  public PositionSheet {
    operations = List.copyOf(operations);
  }
}
