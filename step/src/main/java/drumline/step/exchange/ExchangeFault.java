package drumline.step.exchange;

import drumline.shop.problem.Problem;

/** An exchange file that cannot be understood at one place; carries what a user is told. */
public final class ExchangeFault extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Problem problem;

  /** A fault with what is told of it. */
  public ExchangeFault(Problem problem) {
    super(problem.toLine());
    this.problem = problem;
  }

  /** What a user is told. */
  public Problem problem() {
    return problem;
  }
}
