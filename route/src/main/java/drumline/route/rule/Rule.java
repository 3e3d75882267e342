package drumline.route.rule;

/**
 * A rule of the process, as a reader can check it.
 *
 * @param id short name that a study refers to
 * @param kind what the rule does
 * @param freedom whether the user may do without it
 * @param text the rule in plain words
 * @param source where it comes from, or "common practice"
 */
public record Rule(String id, Kind kind, Freedom freedom, String text, String source) {

  /** What a rule does. */
  public enum Kind {
    /** Makes an operation, or decides how. */
    OPERATION,
    /** Puts one operation before another. */
    ORDER,
    /** Asks for one position. */
    TOGETHER,
    /** Forbids one position, or cutting at once. */
    APART,
    /** Shares a cut among positions. */
    DIVISION,
    /** Warns. */
    CHECK
  }

  /** Whether the user may do without a rule. */
  public enum Freedom {
    /** May be switched off. */
    MAY,
    /** Is always used: piece or machine would not come out without it. */
    FIXED
  }
}
