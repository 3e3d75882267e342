package drumline.economics.triage;

import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Does the piece belong on a multi-spindle at all, and on which machine? A verdict per rule with
 * the figure behind it.
 *
 * <p>Source: rules and limits with their sources in {@code rules.csv}; most are common practice.
 *
 * @param verdict the worst of the piece's findings and the best machine with a drum
 * @param findings one for each rule about the piece
 * @param machines each machine of the library, best first
 */
public record Triage(Verdict verdict, List<RuleFinding> findings, List<MachineFit> machines) {

  /** Copies the lists. */
  public Triage {
    findings = List.copyOf(findings);
    machines = List.copyOf(machines);
  }

  /**
   * The triage of an inquiry.
   *
   * @param inquiry what is asked
   * @param route operations, if they are known already; without them tools are counted off the
   *     print
   */
  public static Triage of(Inquiry inquiry, @Nullable Route route) {
    return of(inquiry, route, TriageRules.shipped());
  }

  /** The same with rules of one's own. */
  public static Triage of(Inquiry inquiry, @Nullable Route route, List<TriageRule> rules) {
    ToolNeed need = route == null ? ToolNeed.ofPrint(inquiry.part()) : ToolNeed.of(route);
    List<RuleFinding> findings =
        rules.stream()
            .filter(rule -> rule.scope() == TriageRule.Scope.PIECE)
            .flatMap(rule -> rule.judge(rule.measure().ofPiece(inquiry, need)).stream())
            .toList();
    List<MachineFit> machines =
        inquiry.machines().stream()
            .map(machine -> fit(inquiry, need, machine, rules))
            .sorted(Comparator.comparing(MachineFit::verdict))
            .toList();
    return new Triage(overall(inquiry, findings, machines), findings, machines);
  }

  private static MachineFit fit(
      Inquiry inquiry, ToolNeed need, Machine machine, List<TriageRule> rules) {
    List<RuleFinding> findings =
        rules.stream()
            .filter(rule -> rule.scope() == TriageRule.Scope.MACHINE)
            .flatMap(rule -> rule.judge(rule.measure().onMachine(inquiry, need, machine)).stream())
            .toList();
    return new MachineFit(machine.name(), worst(findings), findings);
  }

  private static Verdict worst(List<RuleFinding> findings) {
    return findings.stream().map(RuleFinding::verdict).reduce(Verdict.FITS, Verdict::worse);
  }

  private static Verdict overall(
      Inquiry inquiry, List<RuleFinding> findings, List<MachineFit> machines) {
    List<String> drums =
        inquiry.machines().stream()
            .filter(machine -> machine.kind() == Machine.Kind.DRUM)
            .map(Machine::name)
            .toList();
    Verdict bestDrum =
        machines.stream()
            .filter(fit -> drums.contains(fit.machineName()))
            .map(MachineFit::verdict)
            .reduce(Verdict.DOES_NOT_FIT, Verdict::better);
    return worst(findings).worse(bestDrum);
  }
}
