package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.ToolWork;
import drumline.shape.tool.ToolPart;
import drumline.shape.tool.ToolPart.Role;
import drumline.shape.tool.ToolPlacing;
import drumline.shape.tool.WorkingTool;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tooling.ToolKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for every tool's outline, and the angles that give inserts and drills theirs. */
class ToolOutlineTest {

  private static final Bar BAR = Prints.round(30);
  private static final Part PART = Prints.turned(40, Prints.step("f", 0, 40, 28));

  @ParameterizedTest
  @EnumSource(ToolKind.class)
  void everyKindHasACuttingPartAtItsCuttingPointAndStaysWithinItsReach(ToolKind kind) {
    WorkingTool tool = place(OperationKind.ROUGH_TURN, kind, 6);
    List<ToolPart> edges = tool.outline().parts(Role.EDGE);
    assertThat(edges).isNotEmpty();
    double nearest =
        edges.stream()
            .flatMap(part -> part.outline().stream())
            .mapToDouble(p -> Math.min(Math.abs(p.zMm()), Math.abs(p.rMm())))
            .min()
            .orElseThrow();
    assertThat(nearest).as("the cutting part reaches the cutting point's lines").isLessThan(0.06);
    assertThat(tool.overhangMm()).isBetween(0.0, tool.longestMm());
    for (ToolPart part : tool.outline().parts()) {
      assertThat(part.turnedRound().turnedRound()).isEqualTo(part);
      assertThat(part.outline()).allMatch(p -> Double.isFinite(p.zMm() + p.rMm()));
    }
  }

  @Test
  void mainEdgeStandsUnderKaprAndMinorEdgeUnderKaprAndEpsr() {
    WorkingTool tool = place(OperationKind.ROUGH_TURN, ToolKind.TURNING_ROUGH, 30);
    List<PointZr> insert = tool.outline().parts(Role.EDGE).get(0).outline();
    assertThat(insert.get(0)).isEqualTo(new PointZr(0, 0));
    assertThat(angleDeg(insert.get(1))).isCloseTo(95, within(1e-9));
    assertThat(angleDeg(insert.get(3))).isCloseTo(95 + 80, within(1e-9));
  }

  @Test
  void lengthOfADrillsPointFollowsFromItsAngle() {
    WorkingTool tool =
        ToolPlacing.of(
            ToolWork.operation(
                "d", OperationKind.DRILL, ToolKind.DRILL, 10, CutRegion.rectangle(0, 12, 0, 5)),
            SlideKind.END,
            PART,
            BAR);
    double shoulder =
        tool.outline().parts(Role.EDGE).get(0).outline().stream()
            .filter(p -> Math.abs(p.rMm() - 5) < 1e-9)
            .mapToDouble(p -> -p.zMm())
            .min()
            .orElseThrow();
    assertThat(shoulder).isCloseTo(5 / Math.tan(Math.toRadians(70)), within(1e-9));
    assertThat(tool.path().end()).isEqualTo(new PointZr(12, 0));
  }

  @Test
  void bladeStandsInItsGrooveAndComesFromOutside() {
    WorkingTool tool =
        ToolPlacing.of(
            ToolWork.operation(
                "g",
                OperationKind.GROOVE,
                ToolKind.GROOVING,
                3,
                CutRegion.rectangle(10, 15, 11, 16)),
            SlideKind.CROSS,
            PART,
            BAR);
    assertThat(tool.path().begin().rMm()).isGreaterThan(15);
    assertThat(tool.path().cut()).contains(new PointZr(10, 11), new PointZr(12, 11));
    assertThat(tool.overhangMm()).isGreaterThanOrEqualTo(15 - 11);
    assertThat(tool.path().cutting(0)).isEqualTo(tool.path().begin());
    assertThat(tool.path().cutting(1)).isEqualTo(tool.path().end());
  }

  private static WorkingTool place(OperationKind operation, ToolKind kind, double sizeMm) {
    return ToolPlacing.of(
        ToolWork.operation("f", operation, kind, sizeMm, CutRegion.rectangle(0, 20, 14, 16)),
        SlideKind.CROSS,
        PART,
        BAR);
  }

  private static double angleDeg(PointZr edge) {
    return Math.toDegrees(Math.atan2(edge.rMm(), edge.zMm()));
  }
}
