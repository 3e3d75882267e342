package drumline.shop.operation;

import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * The operations that a piece needs with what binds them, before they have places.
 *
 * @param operations operations in a usual order of work
 * @param orders which must come before which
 * @param pairs what else binds two operations
 * @param problems what the rules could not solve, or want a person to look at
 */
public record Route(
    List<Operation> operations,
    List<OrderRule> orders,
    List<PairRule> pairs,
    List<Problem> problems) {

  /** Copies the lists. */
  public Route {
    operations = List.copyOf(operations);
    orders = List.copyOf(orders);
    pairs = List.copyOf(pairs);
    problems = List.copyOf(problems);
  }

  /** The operation with this id, if there is one. */
  public Optional<Operation> findOperation(String id) {
    return operations.stream().filter(operation -> operation.id().equals(id)).findFirst();
  }

  /**
   * The operation with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Operation operation(String id) {
    return findOperation(id)
        .orElseThrow(
            () -> new IllegalArgumentException("id: no operation " + id + " in the route"));
  }
}
