package drumline.planner.audit;

import java.util.List;

/**
 * One rule as it stands in a finished layout.
 *
 * @param name short stable name of the rule
 * @param broken each breach in a sentence, empty if the rule is kept
 */
public record AuditCheck(String name, List<String> broken) {
  /** Copies the list. */
  public AuditCheck {
    broken = List.copyOf(broken);
  }

  /** True if the rule is kept. */
  public boolean isPassed() {
    return broken.isEmpty();
  }
}
