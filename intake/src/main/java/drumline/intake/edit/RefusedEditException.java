package drumline.intake.edit;

import drumline.shop.problem.Problem;

/** An edit that cannot be done; the text is as it was. */
public final class RefusedEditException extends Exception {
  private static final long serialVersionUID = 1L;
  private final transient Problem problem;

  RefusedEditException(String code, String where, String found, String allowed) {
    super(where + ": " + found + ", allowed: " + allowed);
    problem = Problem.error(code, where, found, allowed, "");
  }

  /** What stands against it. */
  public Problem problem() {
    return problem;
  }
}
