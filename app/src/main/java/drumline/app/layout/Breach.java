package drumline.app.layout;

import java.util.List;

/**
 * A rule that a layout breaks, for a person who moves operations.
 *
 * @param words what is broken, with its times
 * @param operationIds operations that it is about
 * @param reason the order or pair rule's own reason, or empty
 * @param alsoMove operations that would have to move as well, the moved ones staying
 * @param alsoMoveWords the same as a sentence, or empty
 */
public record Breach(
    String words,
    List<String> operationIds,
    String reason,
    List<String> alsoMove,
    String alsoMoveWords) {

  /** Copies the lists. */
  public Breach {
    operationIds = List.copyOf(operationIds);
    alsoMove = List.copyOf(alsoMove);
  }
}
