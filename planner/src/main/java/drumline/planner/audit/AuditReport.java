package drumline.planner.audit;

import java.util.List;

/**
 * All rules as they stand in a finished layout.
 *
 * @param checks one for each rule, in the order of the model
 */
public record AuditReport(List<AuditCheck> checks) {
  /** Copies the list. */
  public AuditReport {
    checks = List.copyOf(checks);
  }

  /** True if every rule is kept. */
  public boolean isPassed() {
    return checks.stream().allMatch(AuditCheck::isPassed);
  }

  /** Every breach in a sentence. */
  public List<String> broken() {
    return checks.stream().flatMap(c -> c.broken().stream()).toList();
  }

  /**
   * The check of a rule.
   *
   * @throws IllegalArgumentException if there is no rule of that name
   */
  public AuditCheck check(String name) {
    return checks.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name is "
                        + name
                        + ", allowed: "
                        + checks.stream().map(AuditCheck::name).toList()));
  }
}
