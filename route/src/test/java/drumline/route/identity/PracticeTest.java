package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import drumline.route.Asked;
import drumline.route.RouteCases;
import drumline.route.RouteDerivation;
import drumline.route.rule.Practice;
import drumline.route.rule.PracticeChange;
import drumline.route.rule.PracticeReading;
import drumline.route.rule.Rule;
import drumline.route.rule.RuleBook;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a shop does otherwise: rules off, other allowances, other reach. */
class PracticeTest {
  private static final String BUSH =
      """
      length: 20 mm ±0.2
      outside:
      - {id: body, to: 20 mm, diameter: 24 mm h7}
      front-bore:
      - {id: bore, depth: 20 mm, diameter: 6 mm H8, bottom: through}
      """;

  static Stream<String> switched() {
    return RuleBook.all().stream().filter(rule -> rule.freedom() == Rule.Freedom.MAY).map(Rule::id);
  }

  private static Set<String> used(Route route) {
    Set<String> used = new HashSet<>();
    route.operations().stream().map(Operation::ruleId).forEach(used::add);
    route.orders().stream().map(OrderRule::ruleId).forEach(used::add);
    route.pairs().stream().map(PairRule::ruleId).forEach(used::add);
    return used;
  }

  @ParameterizedTest
  @MethodSource("switched")
  void aRuleThatIsOffMakesNothing(String ruleId) {
    Practice shipped = Practice.shipped();
    Practice without = new Practice(shipped.allowances(), shipped.capability(), Set.of(ruleId));
    for (RouteCases.Case piece : RouteCases.all()) {
      Inquiry inquiry = piece.asked().inquiry();
      Route route = RouteDerivation.derive(inquiry, without);
      assertThat(used(route)).as(piece.name()).doesNotContain(ruleId);
      assertThat(route.operations()).as(piece.name()).isNotEmpty();
    }
  }

  @Test
  void theCasesUseMostRules() {
    Set<String> used = new HashSet<>();
    RouteCases.all().forEach(piece -> used.addAll(used(piece.asked().route())));
    List<String> idle = new ArrayList<>(switched().toList());
    idle.removeAll(used);
    assertThat(idle)
        .as("checks write problems, not operations; division comes with a machine")
        .contains("thread-relief", "within-reach", "divide-longest")
        .hasSizeLessThan(12);
  }

  @Test
  void overridesChangeTheRouteAndAreListed() {
    Asked asked =
        Asked.piece(BUSH)
            .overriding(
                """
                {rules: {ream-bore: {off: our reamers wander}},
                 allowances: {finishTurnStock: 0.3 mm},
                 capability: [{operation: finish-turn, grade: IT 7, grade-with-care: 6,
                   roughness: Ra 0.8, source: our run-offs}]}
                """
                    .replace("\n", ""));
    Inquiry inquiry = asked.inquiry();
    PracticeReading reading = PracticeReading.of(inquiry.overrides());

    assertThat(reading.problems()).isEmpty();
    assertThat(Asked.line(RouteDerivation.derive(inquiry)))
        .isEqualTo("face, rough turn, finish turn, spot, drill, drill, finish bore, cut off");
    Operation finish = RouteDerivation.derive(inquiry).operation("body-finish-turn");
    assertThat(finish.cut().depthMm()).isEqualTo(0.3);
    assertThat(finish.reason()).contains("finish turn reaches IT 7 and Ra 0.8, with care IT 6");
    assertThat(reading.changes())
        .extracting(PracticeChange::what, PracticeChange::was, PracticeChange::now)
        .containsExactly(
            tuple("rule ream-bore", "on", "off: our reamers wander"),
            tuple("allowance finishTurnStock", "0.25 mm", "0.3 mm"),
            tuple(
                "capability of finish-turn",
                "finish turn reaches IT 8 and Ra 1.6, with care IT 7 and Ra 0.4",
                "finish turn reaches IT 7 and Ra 0.8, with care IT 6 and Ra 0.8; our run-offs"));
    assertThat(reading.changes()).allMatch(change -> change.where().startsWith("test.yaml:"));
  }

  @Test
  void wrongNamesAndFixedRulesAreSaid() {
    Inquiry inquiry =
        Asked.piece(BUSH)
            .overriding(
                "{rules: {ream-bores: {off: x}, cut-off-last: {off: x}},"
                    + " allowances: {finishTurnStok: 0.3 mm, reamStock: 0.3}}")
            .inquiry();

    assertThat(PracticeReading.of(inquiry.overrides()).problems())
        .extracting(Problem::code)
        .containsExactly("unknown-rule", "rule-fixed", "unknown-allowance", "allowance-amount");
    assertThat(PracticeReading.of(inquiry.overrides()).problems().get(0).toLine())
        .contains("\"ream-bores\"")
        .endsWith("Maybe \"ream-bore\".");
    assertThat(PracticeReading.of(inquiry.overrides()).problems().get(3).toLine())
        .contains("\"0.3\"; allowed: 0 or more in mm, such as \"0.1 mm\"");
  }
}
