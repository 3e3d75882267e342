package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.audit.AuditCheck;
import drumline.planner.audit.AuditReport;
import drumline.planner.audit.ModelAudit;
import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.SolverLibrary;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule alone, kept and broken, in the audit and in the solver's model. */
class RuleTest {
  static Stream<RuleCase> cases() {
    return RuleCases.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void auditSeesTheBreach(RuleCase rule) {
    assertThat(ModelAudit.of(rule.problem(), rule.kept()).broken()).isEmpty();
    AuditReport report = ModelAudit.of(rule.problem(), rule.broken());
    assertThat(report.checks().stream().filter(c -> !c.isPassed()).map(AuditCheck::name))
        .containsExactly(rule.check());
    assertThat(report.check(rule.check()).broken()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void solverRefusesTheBreach(RuleCase rule) {
    assertThat(SolverLibrary.faultText()).isEmpty();
    for (LayoutSolver.Strength strength : LayoutSolver.Strength.values()) {
      assertThat(admits(rule, rule.kept(), strength)).as("kept, %s", strength).isTrue();
      assertThat(admits(rule, rule.broken(), strength)).as("broken, %s", strength).isFalse();
    }
  }

  private static boolean admits(RuleCase rule, Layout layout, LayoutSolver.Strength strength) {
    LayoutSolver solver = new LayoutSolver(new ProblemTables(rule.problem()), 0, 200, strength);
    return solver.admits(layout, new SolverEffort(5, 5, 1, 1));
  }

  @Test
  void everyCheckHasACase() {
    RuleCase any = RuleCases.all().findFirst().orElseThrow();
    AuditReport report = ModelAudit.of(any.problem(), any.kept());
    assertThat(RuleCases.all().map(RuleCase::check))
        .containsAll(
            report.checks().stream()
                .map(AuditCheck::name)
                .filter(n -> !n.equals("every-task-once"))
                .toList());
  }

  @Test
  void auditMissesNoTask() {
    RuleCase any = RuleCases.all().findFirst().orElseThrow();
    Layout half = new Layout(any.kept().placements().subList(0, 1), RuleCases.CYCLE_MS);
    assertThat(ModelAudit.of(any.problem(), half).broken()).containsExactly("B has no place");
  }
}
