package drumline.cli.screen;

/** What the program says to its caller with its exit code. */
public final class ExitCodes {
  /** Done. */
  public static final int FINE = 0;

  /** The program's own fault. */
  public static final int OUR_FAULT = 1;

  /** Input or command line is wrong. */
  public static final int INPUT_WRONG = 2;

  /** No layout keeps all rules. */
  public static final int NO_LAYOUT = 3;

  private ExitCodes() {}
}
