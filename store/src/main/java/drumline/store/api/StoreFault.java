package drumline.store.api;

import drumline.shop.problem.Problem;
import java.util.List;
import java.util.stream.Collectors;

/** The store cannot be opened, read or written; its problems say why and what to do. */
public final class StoreFault extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<Problem> problems;

  /** Of one problem. */
  public StoreFault(Problem problem) {
    this(List.of(problem));
  }

  /** Of one problem and what the library said. */
  public StoreFault(Problem problem, Throwable cause) {
    super(problem.toLine(), cause);
    this.problems = List.of(problem);
  }

  /**
   * Of several problems.
   *
   * @throws IllegalArgumentException if there is none
   */
  public StoreFault(List<Problem> problems) {
    super(problems.stream().map(Problem::toLine).collect(Collectors.joining("\n")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("problems is empty; allowed: at least one");
    }
    this.problems = List.copyOf(problems);
  }

  /** What is wrong, for any face of the program: at least one. */
  public List<Problem> problems() {
    return problems;
  }
}
