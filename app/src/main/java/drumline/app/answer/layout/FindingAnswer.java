package drumline.app.answer.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One rule as it stands in the layout.
 *
 * @param rule short name of the rule
 * @param words the same in words
 * @param isKept whether it is kept
 * @param detail what was looked at, or the breaches
 * @param breaches each breach
 */
public record FindingAnswer(
    String rule, String words, boolean isKept, String detail, List<BreachAnswer> breaches) {
  /** Copies the lists. */
  public FindingAnswer {
    breaches = List.copyOf(breaches);
  }

  /**
   * One breach.
   *
   * @param words what is broken
   * @param operationIds whom it is about
   * @param reason the rule's reason, or null
   * @param alsoMove operations that would have to move as well
   * @param alsoMoveWords the same as a sentence, or null
   */
  public record BreachAnswer(
      String words,
      List<String> operationIds,
      @Nullable String reason,
      List<String> alsoMove,
      @Nullable String alsoMoveWords) {
    /** Copies the lists. */
    public BreachAnswer {
      operationIds = List.copyOf(operationIds);
      alsoMove = List.copyOf(alsoMove);
    }
  }
}
