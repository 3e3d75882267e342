package drumline.app.answer.layout;

import drumline.app.answer.sheet.OperationFigures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One operation of the present layout with every figure.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param operation the operation
 * @param position position, or null
 * @param slideId slide, or null
 * @param spindleRevPerMin speed, or null
 * @param elements moves and cuts
 * @param limits figures against limits
 * @param places slides that suit it
 * @param before operations that it must come before
 * @param after operations that it must come after
 */
public record OperationAnswer(
    int revision,
    OperationFigures operation,
    @Nullable Integer position,
    @Nullable String slideId,
    @Nullable Double spindleRevPerMin,
    List<Span> elements,
    List<Limit> limits,
    List<Place> places,
    List<Reasoned> before,
    List<Reasoned> after) {
  /** Copies the lists. */
  public OperationAnswer {
    elements = List.copyOf(elements);
    limits = List.copyOf(limits);
    places = List.copyOf(places);
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /**
   * A figure against its limit.
   *
   * @param words what
   * @param figure with unit
   * @param limit with unit
   * @param usedPct figure over limit
   * @param source where the limit comes from
   */
  public record Limit(String words, String figure, String limit, double usedPct, String source) {}

  /**
   * A slide that suits.
   *
   * @param slideId the slide
   * @param position its position
   * @param words both for a reader
   */
  public record Place(String slideId, int position, String words) {}

  /**
   * Another operation with the reason.
   *
   * @param operationId the operation
   * @param reason why
   */
  public record Reasoned(String operationId, String reason) {}
}
