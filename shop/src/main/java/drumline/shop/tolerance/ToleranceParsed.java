package drumline.shop.tolerance;

import drumline.shop.problem.Problem;

/** What came of reading a tolerance: the tolerance, or why there is none. */
public sealed interface ToleranceParsed {

  /**
   * A tolerance that was understood.
   *
   * @param tolerance its deviations at the nominal size
   */
  record Value(Tolerance tolerance) implements ToleranceParsed {}

  /**
   * A text that is no tolerance.
   *
   * @param code stable name of the problem
   * @param found the text as it stands
   * @param allowed what would be right
   * @param hint a sentence that begins with "Maybe", or empty
   */
  record Refused(String code, String found, String allowed, String hint)
      implements ToleranceParsed {

    /** The refusal as a problem of the user's input, at the place where it stands. */
    public Problem toProblem(String where) {
      return Problem.error(code, where, found, allowed, hint);
    }
  }
}
