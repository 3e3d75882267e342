package drumline.app.answer.sheet;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What must be done, and what binds it.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param machineName machine that it is adapted to, or null
 * @param features features in the order of the print
 * @param operations operations in a usual order
 * @param orders which before which
 * @param pairs what else binds two
 * @param problems what is wrong or worth knowing
 */
public record RouteAnswer(
    int revision,
    @Nullable String machineName,
    List<FeatureWork> features,
    List<OperationFigures> operations,
    List<Order> orders,
    List<Pair> pairs,
    List<PlacedProblem> problems) {
  /** Copies the lists. */
  public RouteAnswer {
    features = List.copyOf(features);
    operations = List.copyOf(operations);
    orders = List.copyOf(orders);
    pairs = List.copyOf(pairs);
    problems = List.copyOf(problems);
  }

  /**
   * Operations that make one feature.
   *
   * @param featureId the feature
   * @param words what it is
   * @param operationIds its operations
   */
  public record FeatureWork(String featureId, String words, List<String> operationIds) {
    /** Copies the lists. */
    public FeatureWork {
      operationIds = List.copyOf(operationIds);
    }
  }

  /**
   * One before the other.
   *
   * @param beforeId comes first
   * @param afterId follows
   * @param reason why
   * @param ruleId rule that asks for it
   */
  public record Order(String beforeId, String afterId, String reason, String ruleId) {}

  /**
   * What binds two.
   *
   * @param kind same position, other position or not together
   * @param oneId one
   * @param otherId the other
   * @param reason why
   * @param ruleId rule that asks for it
   */
  public record Pair(String kind, String oneId, String otherId, String reason, String ruleId) {}
}
