package drumline.app.view;

import drumline.app.answer.PlacedProblem;
import drumline.app.answer.sheet.TriageAnswer;
import drumline.app.answer.sheet.TriageAnswer.MachineVerdict;
import drumline.app.answer.sheet.TriageAnswer.RuleVerdict;
import drumline.economics.triage.RuleFinding;
import drumline.economics.triage.Triage;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import java.util.List;

/** The verdict's leaf. */
public final class TriageView {
  private TriageView() {}

  /**
   * The answer.
   *
   * @param revision revision of the text
   */
  public static TriageAnswer answer(
      int revision, Inquiry inquiry, Triage triage, List<PlacedProblem> problems) {
    List<MachineVerdict> machines =
        triage.machines().stream()
            .map(
                fit ->
                    new MachineVerdict(
                        fit.machineName(),
                        title(inquiry, fit.machineName()),
                        Rounded.word(fit.verdict()),
                        fit.verdict().words(),
                        rules(fit.findings())))
            .toList();
    return new TriageAnswer(
        revision,
        Rounded.word(triage.verdict()),
        triage.verdict().words(),
        rules(triage.findings()),
        machines,
        problems);
  }

  private static String title(Inquiry inquiry, String name) {
    return inquiry.machines().stream()
        .filter(machine -> machine.name().equals(name))
        .map(Machine::title)
        .findFirst()
        .orElse(name);
  }

  private static List<RuleVerdict> rules(List<RuleFinding> findings) {
    return findings.stream()
        .map(
            f ->
                new RuleVerdict(
                    f.ruleId(),
                    Rounded.word(f.verdict()),
                    f.verdict().words(),
                    f.text(),
                    f.figure(),
                    f.limit(),
                    f.source()))
        .toList();
  }
}
