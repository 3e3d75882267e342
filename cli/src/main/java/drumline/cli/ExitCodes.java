package drumline.cli;

/** What the program says to its caller with its exit code. */
final class ExitCodes {
  /** Done. */
  static final int FINE = 0;

  /** The program's own fault. */
  static final int OUR_FAULT = 1;

  /** Input or command line is wrong. */
  static final int INPUT_WRONG = 2;

  /** No layout keeps all rules. */
  static final int NO_LAYOUT = 3;

  private ExitCodes() {}
}
