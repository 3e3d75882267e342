package drumline.shape.proof;

/**
 * Something about one cut that a person should look at.
 *
 * @param kind what is wrong
 * @param position where it is done
 * @param operationId the operation
 * @param words as a setter would say it
 */
public record CutNote(Kind kind, int position, String operationId, String words) {

  /** What can be wrong with a cut. */
  public enum Kind {
    /** It takes more than its loads assume: an earlier cut left it on. */
    DEEPER_THAN_ASSUMED,
    /** Nothing is left for it. */
    CUTS_NOTHING,
    /** It would work on the drum when the piece is parted already. */
    AFTER_PARTING
  }
}
