package drumline.planner.check;

import java.util.List;

/**
 * All rules as they stand in a finished timeline.
 *
 * @param findings one for each rule; always the same ones, in the same order, unless operations are
 *     missing: then only that
 */
public record TimelineReport(List<Finding> findings) {

  /** Copies the list. */
  public TimelineReport {
    findings = List.copyOf(findings);
  }

  /** True if every rule is kept. */
  public boolean isPassed() {
    return findings.stream().allMatch(Finding::isPassed);
  }

  /** Rules that are broken. */
  public List<Finding> broken() {
    return findings.stream().filter(finding -> !finding.isPassed()).toList();
  }

  /**
   * What was found about a rule.
   *
   * @throws IllegalArgumentException if there is no rule of that name
   */
  public Finding finding(String name) {
    return findings.stream()
        .filter(finding -> finding.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "name is "
                        + name
                        + ", allowed: "
                        + findings.stream().map(Finding::name).toList()));
  }
}
