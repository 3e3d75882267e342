package drumline.store.api;

import drumline.shop.problem.Problem;

/** The store cannot be opened, read or written; the problem says why and what to do. */
public final class StoreFault extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Problem problem;

  /** Of a problem alone. */
  public StoreFault(Problem problem) {
    super(problem.toLine());
    this.problem = problem;
  }

  /** Of a problem and what the library said. */
  public StoreFault(Problem problem, Throwable cause) {
    super(problem.toLine(), cause);
    this.problem = problem;
  }

  /** What is wrong, for any face of the program. */
  public Problem problem() {
    return problem;
  }
}
