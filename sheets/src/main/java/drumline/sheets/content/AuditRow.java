package drumline.sheets.content;

/**
 * One check of the finished layout.
 *
 * @param check what was checked
 * @param figure what was found
 * @param limit what is allowed
 * @param outcome whether it is kept
 */
public record AuditRow(String check, String figure, String limit, Outcome outcome) {

  /** Outcome of a check. */
  public enum Outcome {
    /** Kept. */
    KEPT("kept"),
    /** Not kept. */
    BROKEN("broken");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** As a reader sees it. */
    public String words() {
      return words;
    }
  }
}
