package drumline.app.replan.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.app.Examples;
import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.ask.WhatIf;
import drumline.app.ask.WhatIf.Move;
import drumline.app.divide.DividedRoute;
import drumline.app.economic.EconomicCycle;
import drumline.app.replan.Shortening;
import drumline.app.replan.Shortenings;
import drumline.app.study.MachineStudy;
import drumline.app.study.NoLayout;
import drumline.planner.api.Cancel;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.bound.CycleBound;
import drumline.planner.tables.ProblemTables;
import drumline.planner.translate.RouteTranslator;
import drumline.shop.machine.DoubleIndexing;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Planning again with something changed: moves, advice, the cheapest cycle, machines side by side.
 */
class ReplanTest {
  private static final String SLEEVE = "sleeve.yaml";

  private static Opened sleeve() {
    return OpenInquiry.example(SLEEVE);
  }

  private static WhatIf ask(String operationId, int position) {
    return WhatIf.ask(
        sleeve(), List.of(), List.of(new Move(operationId, position)), 0.5, () -> false);
  }

  @Test
  void aMoveNeverShortensAProvenCycleAndSaysWhatItCosts() {
    WhatIf answer = ask("front-face-face", 2);
    assertThat(answer.isAsked()).isTrue();
    assertThat(answer.then().isFeasible()).isTrue();
    assertThat(answer.then().cycleS()).isGreaterThanOrEqualTo(answer.now().boundS());
    assertThat(answer.text()).contains("front-face-face in position 2: ").contains(" s");
  }

  @Test
  void anImpossibleMoveNamesTheRule() {
    WhatIf answer = ask("piece-cut-off", 2);
    assertThat(answer.then().isFeasible()).isFalse();
    assertThat(answer.text())
        .contains(
            "no layout; piece-cut-off is pinned to position 2, but pieces are cut off in the last"
                + " position, 6");
  }

  @Test
  void wrongQuestionsAreSaidAllAtOnce() {
    WhatIf answer = ask("front-fase-face", 12);
    assertThat(answer.isAsked()).isFalse();
    assertThat(answer.problems()).hasSize(2);
    assertThat(answer.problems().get(0).toLine()).contains("Maybe front-face-face");
    assertThat(answer.problems().get(1).toLine()).contains("1 to 7 on drum-6x42-common");
  }

  @Test
  void shorteningsShortenTheGreatestFirst() {
    MachineStudy study = Examples.study(SLEEVE);
    List<Shortening> found = Shortenings.of(study, new PlannerSettings(0.2, 2, 1), Cancel.never());
    double last = Double.POSITIVE_INFINITY;
    for (Shortening one : found) {
      assertThat(one.gainS()).isPositive().isLessThanOrEqualTo(last);
      assertThat(one.words()).isNotBlank();
      last = one.gainS();
    }
    assertThat(Shortenings.of(study, new PlannerSettings(0.2, 2, 1), () -> true)).isEmpty();
  }

  @Test
  void economicCycleStartsAtTheShortestAndNeverCostsMore() {
    for (String name : Examples.names()) {
      MachineStudy study = Examples.study(name);
      EconomicCycle curve = EconomicCycle.of(study, study.plan().orElseThrow());
      double before = 0;
      for (EconomicCycle.Point point : curve.points()) {
        assertThat(point.cycleS()).as(name).isGreaterThan(before);
        before = point.cycleS();
      }
      assertThat(curve.points().get(0).cycleS())
          .isEqualTo(study.plan().orElseThrow().timeline().cycleS());
      assertThat(curve.cheapest().money().cost().total())
          .as(name)
          .isLessThanOrEqualTo(study.plan().orElseThrow().money().cost().total());
    }
  }

  /** Dividing never raises the bound, and what is left whole fills less than the rule allows. */
  @Test
  void longestCutsAreDividedInUpToThreeParts() {
    int divided = 0;
    for (String name : Examples.names()) {
      MachineStudy study = Examples.study(name);
      DividedRoute route = DividedRoute.of(study.inquiry(), study.machine());
      assertThat(boundMs(study, route.route())).isLessThanOrEqualTo(boundMs(study, route.whole()));
      assertThat(route.divided()).allMatch(words -> words.matches(".+ in [23] parts"));
      divided += route.divided().size();
      assertThat(route.route().operations().size() >= route.whole().operations().size()).isTrue();
    }
    assertThat(divided).as("the coupling's pipe end is divided").isPositive();
  }

  private static int boundMs(MachineStudy study, Route route) {
    return CycleBound.of(
            new ProblemTables(
                RouteTranslator.translate(
                        route,
                        study.machine(),
                        study.inquiry().part(),
                        study.inquiry().bar(),
                        List.of())
                    .translation()
                    .orElseThrow()
                    .problem()))
        .cycleMs();
  }

  @Test
  void doubleIndexingHalvesThePositionsAndDoublesThePieces() {
    Machine single = machine("drum-8x42");
    Machine pair = DoubleIndexing.of(single).orElseThrow();
    assertThat(pair.lastPosition()).isEqualTo(4);
    assertThat(pair.indexing().piecesPerIndexCount()).isEqualTo(2);
    assertThat(pair.indexS()).isGreaterThan(single.indexS());
    assertThat(pair.pickUp()).isNotNull();
    assertThat(DoubleIndexing.of(pair)).isEmpty();
    assertThat(DoubleIndexing.of(machine("drum-8x26"))).isEmpty();
  }

  private static Machine machine(String name) {
    return sleeve().inquiry().machines().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void bothWaysOfIndexingStandSideBySide() {
    PlanInquiry plan =
        PlanInquiry.plan(sleeve(), List.of("drum-8x42"), 0.3, 1, SearchWatch.silent());
    assertThat(plan.studies())
        .extracting(study -> study.machine().name())
        .containsExactly("drum-8x42", "drum-8x42-double");
    plan.studies().stream()
        .flatMap(study -> study.plan().stream())
        .forEach(
            p -> {
              assertThat(p.audit().isPassed()).isTrue();
              assertThat(p.money().output().grossPerHour())
                  .isEqualTo(
                      3600 * p.timeline().piecesPerIndexCount() / p.timeline().cycleS(),
                      org.assertj.core.api.Assertions.within(0.01));
            });
  }

  @Test
  void aLongConflictIsCutToAFewRules() {
    List<String> rules = new ArrayList<>();
    for (int i = 1; i <= 40; i++) {
      rules.add("rule " + i);
    }
    String words = NoLayout.words(rules);
    assertThat(words).startsWith("40 rules that cannot all hold, among them: rule 36; ");
    assertThat(words).endsWith("rule 40; and 35 more");
    assertThat(NoLayout.words(List.of("too few tool seats: 19 tools for 16 seats on a")))
        .isEqualTo("too few tool seats: 19 tools for 16 seats on a");
    assertThatThrownBy(
            () ->
                NoLayout.of(
                    machine("drum-8x26"),
                    new PlanningResult.Planned(
                        new drumline.planner.model.Layout(List.of(), 1),
                        1,
                        1,
                        true,
                        1,
                        new drumline.planner.audit.AuditReport(List.of()),
                        List.of())))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
