package drumline.economics.triage;

import java.util.List;

/**
 * Whether a piece fits one machine of the library.
 *
 * @param machineName machine
 * @param verdict worst of the findings
 * @param findings one for each machine rule, in the order of the rules
 */
public record MachineFit(String machineName, Verdict verdict, List<RuleFinding> findings) {

  /** Copies the list. */
  public MachineFit {
    findings = List.copyOf(findings);
  }
}
