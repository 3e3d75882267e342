package drumline.app.answer.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An operation on the wall.
 *
 * @param operationId the operation
 * @param featureId feature that it makes
 * @param kind kind of operation
 * @param pattern way of working
 * @param title as a process sheet says it
 * @param orderCount its place in the order of the position, from 1
 * @param startS begin
 * @param endS end
 * @param spindleRevPerMin speed; 0 where the spindle stands
 * @param elements moves and cuts
 * @param pin what is fixed, or null
 * @param isMoved whether it stands elsewhere than in the layout it began from
 * @param breaches indexes of findings that name it
 */
public record Block(
    String operationId,
    String featureId,
    String kind,
    String pattern,
    String title,
    int orderCount,
    double startS,
    double endS,
    double spindleRevPerMin,
    List<Span> elements,
    @Nullable PinAnswer pin,
    boolean isMoved,
    List<Integer> breaches) {
  /** Copies the lists. */
  public Block {
    elements = List.copyOf(elements);
    breaches = List.copyOf(breaches);
  }
}
