package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shape.Prints;
import drumline.shape.proof.Finding;
import drumline.shape.proof.RemovalProof;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A bore that ends in a drill's cone, made by a smaller drill and a boring tool. */
class DrillPointTest {

  private static final Bar BAR = Prints.round(20);
  private static final Part PART =
      Prints.part(
          30,
          List.of(Prints.step("o", 0, 30, 20)),
          List.of(),
          List.of(Prints.bore("b", End.BACK, 0, 10, 9, Bottom.DRILL_POINT)),
          List.of());

  @Test
  void coneOfTheSmallerDrillIsEnough() {
    RemovalProof proof = proof(8, 10, 9);
    assertThat(proof.findings()).isEmpty();
    assertThat(proof.holds()).isTrue();
  }

  @Test
  void wallLeftOnIsStillTold() {
    RemovalProof proof = proof(8, 10, 8.8);
    assertThat(proof.findings())
        .singleElement()
        .extracting(Finding::kind)
        .isEqualTo(Finding.Kind.LEFT_ON);
  }

  @Test
  void drillThatGoesDeeperThanTheConeIsTold() {
    RemovalProof proof = proof(8, 12, 9);
    assertThat(proof.findings())
        .singleElement()
        .extracting(Finding::kind)
        .isEqualTo(Finding.Kind.GOUGED);
  }

  private static RemovalProof proof(double drillMm, double drillToMm, double boredMm) {
    double r = drillMm / 2;
    double cone = r / Math.tan(Math.toRadians(59));
    CutRegion drilled =
        new CutRegion(
            List.of(
                new PointZr(31, 0),
                new PointZr(30 - drillToMm - cone, 0),
                new PointZr(30 - drillToMm, r),
                new PointZr(31, r)));
    List<Operation> cuts =
        List.of(
            Prints.operation("off", OperationKind.CUT_OFF, CutRegion.rectangle(30, 32, 0, 11)),
            Prints.operation("drill", OperationKind.DRILL, drilled),
            Prints.operation(
                "bore", OperationKind.FINISH_BORE, CutRegion.rectangle(20, 30, 0, boredMm / 2)));
    return RemovalProof.of(
        BAR, PART, WorkpieceStates.of(BAR, PART, List.of(new PositionWork(1, cuts))));
  }
}
