package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.route.Asked;
import drumline.route.WorkOrder;
import drumline.route.divide.RouteDivision;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One operation in several positions. */
class DivisionTest {
  private static final Route ROUTE =
      Asked.piece(
              """
              length: 24 mm ±0.2
              outside:
              - {id: body, to: 24 mm, diameter: 22 mm h8}
              front-bore:
              - {id: bore, depth: 24 mm, diameter: 8 mm H7, bottom: through}
              features:
              - {id: grip, kind: knurl, step: body, from: 4 mm, to: 12 mm, pitch: 1 mm, form: straight}
              - {id: holes, kind: face-holes, end: front, pitch-circle: 15 mm, diameter: 2 mm, depth: 3 mm, count: 4}
              relations:
              - {kind: runout, of: bore, to: body, value: 0.02 mm}
              """)
          .route();

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void partsTakeTheWholeAndAStartEach(int parts) {
    Operation whole = ROUTE.operation("body-rough-turn");
    Route divided = RouteDivision.divide(ROUTE, whole.id(), parts);
    double sum = 0;
    for (int i = 1; i <= parts; i++) {
      Operation part = divided.operation("body-rough-turn-" + i);
      double oneS = part.cut().cutS(2000);
      assertThat(oneS).isLessThan(whole.cut().cutS(2000));
      assertThat(part.loads()).isEqualTo(whole.loads());
      assertThat(part.title()).endsWith("(" + i + " of " + parts + ")");
      sum += oneS;
    }
    assertThat(sum).isGreaterThan(whole.cut().cutS(2000));
    assertThat(divided.findOperation(whole.id())).isEmpty();
    assertThat(divided.operations()).hasSize(ROUTE.operations().size() + parts - 1);
  }

  @Test
  void partsFollowOneAnotherAndKeepWhatWasBeforeAndAfter() {
    Route divided = RouteDivision.divide(ROUTE, "body-rough-turn", 3);
    assertThat(WorkOrder.allBefore(divided, "body-rough-turn-3"))
        .contains("body-rough-turn-1", "body-rough-turn-2");
    for (String id : WorkOrder.allBefore(ROUTE, "body-rough-turn")) {
      assertThat(WorkOrder.allBefore(divided, "body-rough-turn-1")).contains(id);
    }
    assertThat(WorkOrder.allBefore(divided, "body-finish-turn")).contains("body-rough-turn-3");
    assertThat(WorkOrder.of(divided)).hasSize(divided.operations().size());
  }

  @Test
  void pairsHoldForEveryPart() {
    Route divided = RouteDivision.divide(ROUTE, "bore-drill-a", 2);
    List<PairRule> before = pairsOf(ROUTE, "bore-drill-a");
    assertThat(before).isNotEmpty();
    assertThat(pairsOf(divided, "bore-drill-a-1")).hasSameSizeAs(before);
    assertThat(pairsOf(divided, "bore-drill-a-2")).hasSameSizeAs(before);
    assertThat(divided.pairs()).hasSize(ROUTE.pairs().size() + before.size());
  }

  private static List<PairRule> pairsOf(Route route, String id) {
    return route.pairs().stream()
        .filter(p -> p.oneId().equals(id) || p.otherId().equals(id))
        .toList();
  }

  @Test
  void firstPartsStopShortAndTheLastTakesTheRegionWhole() {
    Route divided = RouteDivision.divide(ROUTE, "body-rough-turn", 2);
    assertThat(reach(divided.operation("body-rough-turn-1"))).isEqualTo(12);
    assertThat(reach(divided.operation("body-rough-turn-2")))
        .isEqualTo(reach(ROUTE.operation("body-rough-turn")));
  }

  private static double reach(Operation operation) {
    return operation.removes().get(0).outline().stream().mapToDouble(PointZr::zMm).max().orElse(0);
  }

  @Test
  void whatCannotBeDividedIsRefused() {
    assertThat(RouteDivision.canDivide(ROUTE.operation("holes-face-drill"), 4)).isTrue();
    assertThat(RouteDivision.canDivide(ROUTE.operation("holes-face-drill"), 3)).isFalse();
    assertThat(RouteDivision.canDivide(ROUTE.operation("body-finish-turn"), 2)).isFalse();
    assertThat(RouteDivision.canDivide(ROUTE.operation("piece-cut-off"), 2)).isFalse();
    assertThatThrownBy(() -> RouteDivision.divide(ROUTE, "body-finish-turn", 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("partsCount: 2 of body-finish-turn");
    assertThatThrownBy(() -> RouteDivision.divide(ROUTE, "body-rough-turn", 1))
        .hasMessageContaining("partsCount: 1");
  }
}
