package drumline.planner.model;

/**
 * A rule for two tasks.
 *
 * @param kind what is asked of them
 * @param firstId one task
 * @param secondId the other
 * @param reason why, in shop words; may be empty
 */
public record PairRule(Kind kind, String firstId, String secondId, String reason) {
  /** What a pair rule asks. */
  public enum Kind {
    /** Both in one position: no index in between. */
    MUST_SHARE,
    /** Never both in one position. */
    MUST_NOT_SHARE,
    /** In one position only one after the other. */
    MUST_NOT_OVERLAP
  }
}
