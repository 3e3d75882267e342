package drumline.app.listing;

import drumline.economics.triage.MachineFit;
import drumline.economics.triage.RuleFinding;
import drumline.economics.triage.Triage;
import drumline.economics.triage.Verdict;
import drumline.shop.inquiry.Inquiry;
import java.util.List;
import java.util.stream.Collectors;

/** A triage as text: rules with their figures, then the machines. */
public final class TriageListing {
  private TriageListing() {}

  /** The triage as text. */
  public static String text(Inquiry inquiry, Triage triage) {
    StringBuilder text = new StringBuilder();
    text.append(inquiry.title()).append(": ").append(triage.verdict().words()).append("\n\n");
    TextTable rules = new TextTable("verdict", ">figure", "limit");
    for (RuleFinding finding : triage.findings()) {
      rules.row(finding.verdict().words(), finding.figure(), finding.limit());
      rules.note(finding.text());
    }
    text.append(rules.text()).append('\n');
    TextTable machines = new TextTable("machine", "verdict");
    for (MachineFit fit : triage.machines()) {
      machines.row(fit.machineName(), fit.verdict().words());
      machines.note(because(fit));
    }
    text.append(machines.text());
    text.append(
        "\nRules and limits are common practice where no source is named; a person decides.");
    return text.toString();
  }

  /** What speaks against a machine; for one that fits, nothing does. */
  private static String because(MachineFit fit) {
    List<RuleFinding> against =
        fit.findings().stream().filter(f -> f.verdict() != Verdict.FITS).toList();
    return against.isEmpty()
        ? "every rule kept"
        : against.stream()
            .map(f -> f.ruleId().replace('-', ' ') + " " + f.figure() + " (" + f.limit() + ")")
            .collect(Collectors.joining("; "));
  }
}
