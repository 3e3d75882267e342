package drumline.app.answer.sheet;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether the piece belongs on a multi-spindle, rule by rule.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param verdict fits, look-closer or does-not-fit; null where the text has errors
 * @param verdictWords the same in words
 * @param rules rules about the piece
 * @param machines machines, best first
 * @param problems what is wrong or worth knowing
 */
public record TriageAnswer(
    int revision,
    @Nullable String verdict,
    @Nullable String verdictWords,
    List<RuleVerdict> rules,
    List<MachineVerdict> machines,
    List<PlacedProblem> problems) {
  /** Copies the lists. */
  public TriageAnswer {
    rules = List.copyOf(rules);
    machines = List.copyOf(machines);
    problems = List.copyOf(problems);
  }

  /**
   * What one rule says.
   *
   * @param ruleId the rule
   * @param verdict fits, look-closer or does-not-fit
   * @param verdictWords the same in words
   * @param words the rule
   * @param figure what the piece has
   * @param limit what the rule asks
   * @param source where the rule comes from
   */
  public record RuleVerdict(
      String ruleId,
      String verdict,
      String verdictWords,
      String words,
      String figure,
      String limit,
      String source) {}

  /**
   * Whether one machine takes the piece.
   *
   * @param machineName the machine
   * @param machineTitle as a reader knows it
   * @param verdict fits, look-closer or does-not-fit
   * @param verdictWords the same in words
   * @param rules rules about the machine
   */
  public record MachineVerdict(
      String machineName,
      String machineTitle,
      String verdict,
      String verdictWords,
      List<RuleVerdict> rules) {
    /** Copies the lists. */
    public MachineVerdict {
      rules = List.copyOf(rules);
    }
  }
}
