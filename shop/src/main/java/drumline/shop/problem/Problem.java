package drumline.shop.problem;

/**
 * Something wrong, or worth knowing, about what a user gave us: the same list on every face of the
 * program.
 *
 * @param code short stable name of the rule, lower-case words joined by hyphens, e.g. {@code
 *     unknown-key}
 * @param severity whether the study can go on
 * @param where place as a reader finds it: file, line and key path, or element id
 * @param found what stands there
 * @param allowed what would be right
 * @param hint a sentence that begins with "Maybe", or empty
 */
public record Problem(
    String code, Severity severity, String where, String found, String allowed, String hint) {

  /** How bad it is. */
  public enum Severity {
    /** The study stops here. */
    ERROR,
    /** The study goes on; a person must look at it. */
    WARNING
  }

  /** A problem that stops the study. */
  public static Problem error(
      String code, String where, String found, String allowed, String hint) {
    return new Problem(code, Severity.ERROR, where, found, allowed, hint);
  }

  /** A problem that a person must look at. */
  public static Problem warning(
      String code, String where, String found, String allowed, String hint) {
    return new Problem(code, Severity.WARNING, where, found, allowed, hint);
  }

  /** The same problem at a place that says more, e.g. a line of a file for an element's id. */
  public Problem withWhere(String newWhere) {
    return new Problem(code, severity, newWhere, found, allowed, hint);
  }

  /** One line for a terminal: severity, place, found, allowed and hint. */
  public String toLine() {
    String tail = hint.isEmpty() ? "" : " " + hint;
    String word = severity == Severity.ERROR ? "error" : "warning";
    return word + ": " + where + ": " + found + "; allowed: " + allowed + "." + tail;
  }
}
