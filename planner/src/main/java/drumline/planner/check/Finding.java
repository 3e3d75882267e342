package drumline.planner.check;

import java.util.List;

/**
 * One rule as it stands in a finished timeline.
 *
 * @param name short stable name of the rule
 * @param isPassed whether the rule is kept
 * @param detail what was looked at, or each breach in a sentence
 */
public record Finding(String name, boolean isPassed, String detail) {

  static Finding of(String name, String lookedAt, List<String> broken) {
    return new Finding(
        name, broken.isEmpty(), broken.isEmpty() ? lookedAt : String.join("; ", broken));
  }
}
