package drumline.planner.check;

import java.util.List;

/**
 * One rule as it stands in a finished timeline.
 *
 * @param name short stable name of the rule
 * @param isPassed whether the rule is kept
 * @param detail what was looked at, or all breaches
 * @param breaches each breach in a sentence; empty if the rule is kept
 */
public record Finding(String name, boolean isPassed, String detail, List<String> breaches) {

  /** Copies the list. */
  public Finding {
    breaches = List.copyOf(breaches);
  }

  static Finding of(String name, String lookedAt, List<String> broken) {
    return new Finding(
        name, broken.isEmpty(), broken.isEmpty() ? lookedAt : String.join("; ", broken), broken);
  }
}
