package drumline.app.formula;

import drumline.shop.problem.Problem;

/** A value that a formula cannot take, with what is wrong about it. */
public final class RefusedValue extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final String input;
  private final transient Problem problem;

  /**
   * Refuses the value of an input.
   *
   * @param input key of the input
   * @param problem what is wrong, its place still to be named
   */
  public RefusedValue(String input, Problem problem) {
    super(problem.toLine());
    this.input = input;
    this.problem = problem;
  }

  /** The problem at its place. */
  public Problem problemAt(String formulaName) {
    return problem.withWhere("formula " + formulaName + ", " + input);
  }
}
