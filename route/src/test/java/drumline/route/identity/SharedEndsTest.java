package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.route.Asked;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Allowances;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which work a machine with two spindles may do at either. The piece's longest cylinder is the body
 * from 10 to 50 mm, Ø20: the second spindle grips it from 10 to 20 mm.
 */
class SharedEndsTest {
  private static final Allowances SHIPPED = Allowances.shipped();
  private static final Inquiry INQUIRY =
      Asked.piece(
              """
              length: 60 mm ±0.2
              outside:
              - {id: nose, to: 10 mm, diameter: 16 mm h8}
              - {id: body, to: 50 mm, diameter: 20 mm h8}
              - {id: tail, to: 60 mm, diameter: 18 mm h8}
              features:
              - {id: far, kind: cross-holes, at: 25 mm, diameter: 4 mm, depth: 5 mm}
              - {id: far-edge, kind: deburring, of: far, method: chamfer}
              - {id: near, kind: cross-holes, at: 21 mm, diameter: 4 mm, depth: 5 mm}
              """)
          .in("CuZn39Pb3")
          .inquiry();

  private static Route on(String machine) {
    return MachineRoute.adapt(
        RouteDerivation.derive(INQUIRY, SHIPPED),
        INQUIRY.machines().stream().filter(m -> m.name().equals(machine)).findFirst().orElseThrow(),
        INQUIRY,
        SHIPPED);
  }

  private static List<String> either(Route route) {
    return route.operations().stream()
        .filter(o -> o.end() == WorkEnd.EITHER)
        .map(Operation::id)
        .toList();
  }

  @Test
  void outsideWorkBehindTheGripMayGoToTheSecondSpindle() {
    assertThat(either(on("turning-centre-42")))
        .contains("tail-finish-turn", "far-cross-drill", "far-edge-deburr")
        .doesNotContain("near-cross-drill", "body-finish-turn", "nose-finish-turn");
  }

  @Test
  void roughingAndCutOffStayAtTheBar() {
    assertThat(on("turning-centre-42").operations())
        .filteredOn(o -> o.kind() == OperationKind.ROUGH_TURN || o.kind() == OperationKind.CUT_OFF)
        .isNotEmpty()
        .allMatch(o -> o.end() == WorkEnd.FRONT);
  }

  @Test
  void whatMayGoNeedNotWaitForTheCutOff() {
    Route route = on("turning-centre-42");
    List<String> either = either(route);
    assertThat(route.orders())
        .filteredOn(rule -> rule.afterId().equals("piece-cut-off"))
        .isNotEmpty()
        .noneMatch(rule -> either.contains(rule.beforeId()));
  }

  @Test
  void aDrumChangesNothing() {
    assertThat(either(on("drum-8x26"))).isEqualTo(either(RouteDerivation.derive(INQUIRY, SHIPPED)));
  }
}
