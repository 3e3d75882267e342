package drumline.route.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.route.Asked;
import drumline.route.RandomPieces;
import drumline.route.RouteCases;
import drumline.route.RouteDerivation;
import drumline.route.WorkOrder;
import drumline.route.feature.TurnedPart;
import drumline.route.order.UserOrders;
import drumline.route.rule.Practice;
import drumline.route.rule.RuleBook;
import drumline.shape.proof.Finding;
import drumline.shape.proof.RemovalProof;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the route of any piece: the handbook's small ones and thirty random ones. */
class EveryRouteTest {

  private static final List<Piece> PIECES =
      Stream.concat(
              RouteCases.all().stream().map(piece -> piece(piece.name(), piece.asked())),
              LongStream.rangeClosed(1, 30)
                  .mapToObj(seed -> piece("seed " + seed, RandomPieces.of(seed))))
          .toList();

  /** A piece with its route. */
  record Piece(String name, Inquiry inquiry, Route route) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Piece piece(String name, Asked asked) {
    Inquiry inquiry = asked.inquiry();
    return new Piece(name, inquiry, RouteDerivation.derive(inquiry));
  }

  static List<Piece> pieces() {
    return PIECES;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void operationsSayWhyAndWhence(Piece piece) {
    Route route = piece.route();
    assertThat(route.operations().stream().map(Operation::id))
        .as(piece.name())
        .doesNotHaveDuplicates();
    for (Operation operation : route.operations()) {
      assertThat(operation.reason()).startsWith(RuleBook.rule(operation.ruleId()).text());
      assertThat(operation.sources()).as(operation.id()).hasSizeGreaterThanOrEqualTo(4);
      assertThat(operation.slides()).as(operation.id()).isNotEmpty();
      if (operation.kind() != OperationKind.DEBURR) {
        assertThat(operation.loads().cuttingForceN()).as(operation.id()).isPositive();
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void timeFallsWithSpeed(Piece piece) {
    for (Operation operation : piece.route().operations()) {
      CutSpec cut = operation.cut();
      assertThat(cut.cutS(1000)).as(piece.name() + ", " + operation.id()).isPositive();
      if (cut.revolutionsCount() > 0) {
        assertThat(cut.cutS(2000)).as(operation.id()).isLessThan(cut.cutS(1000));
        assertThat(cut.lowestRevPerMin()).isLessThanOrEqualTo(cut.highestRevPerMin());
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void ordersHaveReasonsAndCloseNoCircle(Piece piece) {
    Route route = piece.route();
    assertThat(UserOrders.circle(route)).as(piece.name()).isEmpty();
    assertThat(WorkOrder.of(route)).hasSameSizeAs(route.operations());
    for (OrderRule order : route.orders()) {
      assertThat(order.reason()).isEqualTo(RuleBook.rule(order.ruleId()).text());
      assertThat(route.findOperation(order.beforeId())).isPresent();
      assertThat(route.findOperation(order.afterId())).isPresent();
    }
    for (PairRule pair : route.pairs()) {
      assertThat(RuleBook.rule(pair.ruleId()).text()).isEqualTo(pair.reason());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void finishingNeverComesBeforeRoughingAndNothingAfterParting(Piece piece) {
    Route route = piece.route();
    Set<String> beforeParting = WorkOrder.allBefore(route, "piece-cut-off");
    for (Operation operation : route.operations()) {
      Set<String> before = WorkOrder.allBefore(route, operation.id());
      boolean rough =
          operation.kind() == OperationKind.ROUGH_TURN
              || operation.kind() == OperationKind.ROUGH_BORE;
      for (Operation other : route.operations()) {
        if (rough && sameFinish(operation, other)) {
          assertThat(before).as(piece.name()).doesNotContain(other.id());
          assertThat(WorkOrder.allBefore(route, other.id())).contains(operation.id());
        }
      }
      if (operation.end() == WorkEnd.FRONT && operation.kind() != OperationKind.CUT_OFF) {
        assertThat(beforeParting).as(piece.name()).contains(operation.id());
      }
      if (operation.end() == WorkEnd.BACK) {
        assertThat(before).as(piece.name()).contains("piece-cut-off");
      }
    }
  }

  private static boolean sameFinish(Operation rough, Operation other) {
    OperationKind finish =
        rough.kind() == OperationKind.ROUGH_TURN
            ? OperationKind.FINISH_TURN
            : OperationKind.FINISH_BORE;
    return other.kind() == finish && other.end() == rough.end();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pieces")
  void theCutsMakeThePiece(Piece piece) {
    Inquiry inquiry = piece.inquiry();
    List<Operation> sequence = WorkOrder.of(piece.route());
    List<PositionWork> work = new ArrayList<>();
    List<Operation> drum = sequence.stream().filter(o -> o.end() != WorkEnd.BACK).toList();
    List<Operation> ordered = new ArrayList<>(drum);
    ordered.sort(
        (a, b) ->
            Boolean.compare(a.kind() == OperationKind.CUT_OFF, b.kind() == OperationKind.CUT_OFF));
    work.add(new PositionWork(1, ordered));
    work.add(new PositionWork(2, sequence.stream().filter(o -> o.end() == WorkEnd.BACK).toList()));
    var turned = TurnedPart.of(inquiry, Practice.shipped());
    RemovalProof proof =
        RemovalProof.of(inquiry.bar(), turned, WorkpieceStates.of(inquiry.bar(), turned, work));
    assertThat(proof.findings().stream().filter(f -> !inCone(inquiry.part(), f)))
        .as(piece.name())
        .isEmpty();
  }

  /** The print leaves open how steep a drill's point is; what lies beyond the depth is free. */
  private static boolean inCone(Part part, Finding finding) {
    double near = finding.region().fromZMm();
    double far = finding.region().toZMm();
    return Stream.concat(
            part.frontBore().stream()
                .filter(b -> b.bottom() == Bottom.DRILL_POINT && near >= b.toDepthMm() - 1e-6),
            part.backBore().stream()
                .filter(
                    b ->
                        b.bottom() == Bottom.DRILL_POINT
                            && far <= part.lengthMm() - b.toDepthMm() + 1e-6))
        .findAny()
        .isPresent();
  }
}
