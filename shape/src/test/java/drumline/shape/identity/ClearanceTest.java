package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shape.Prints;
import drumline.shape.ToolWork;
import drumline.shape.clearance.ClearanceCheck;
import drumline.shape.clearance.ClearanceReport;
import drumline.shape.clearance.Meeting;
import drumline.shape.clearance.Meeting.Kind;
import drumline.shape.clearance.MeetingPairs;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.PositionTools.Job;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.PairRule;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tooling.ToolKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tools that a setter knows to meet, and the same ones kept apart. */
class ClearanceTest {

  private static final Bar BAR = Prints.round(30);

  /** Collar before a neck: Ø28 to z 20, Ø20 to z 32, Ø28 to z 40; a drilled hole in front. */
  private static final Part PART =
      Prints.part(
          40,
          List.of(
              Prints.step("a", 0, 20, 28),
              Prints.step("b", 20, 32, 20),
              Prints.step("c", 32, 40, 28)),
          List.of(Prints.bore("hole", End.FRONT, 0, 12, 8, Bottom.DRILL_POINT)),
          List.of(),
          List.of());

  private static final Operation FACE =
      ToolWork.operation(
          "face",
          OperationKind.FACE,
          ToolKind.TURNING_ROUGH,
          30,
          CutRegion.rectangle(-0.3, 0, 0, 15));
  private static final Operation DRILL =
      ToolWork.operation("drill", OperationKind.DRILL, ToolKind.DRILL, 8, drilled(8, 12));
  private static final Operation TURN =
      ToolWork.operation(
          "turn",
          OperationKind.ROUGH_TURN,
          ToolKind.TURNING_ROUGH,
          30,
          CutRegion.rectangle(0, 20, 14, 16));
  private static final Operation OFF =
      ToolWork.operation(
          "off", OperationKind.CUT_OFF, ToolKind.CUT_OFF, 3, CutRegion.rectangle(40, 43, 0, 16));

  private static CutRegion drilled(double diameterMm, double depthMm) {
    double r = diameterMm / 2;
    double cone = r / Math.tan(Math.toRadians(70));
    return new CutRegion(
        List.of(
            new PointZr(-1, 0),
            new PointZr(depthMm + cone, 0),
            new PointZr(depthMm, r),
            new PointZr(-1, r)));
  }

  @Test
  void facingToolMeetsTheDrillAtTheSameTimeOnly() {
    assertThat(kinds(report(ToolWork.cross(FACE, 0, 2), ToolWork.end(DRILL, 0, 2))))
        .containsExactly(Kind.TOOLS);
    assertThat(report(ToolWork.cross(FACE, 0, 2), ToolWork.end(DRILL, 2.5, 4)).isClear()).isTrue();
  }

  @Test
  void meetingIsSaidWithPlaceTimeAndSize() {
    Meeting meeting =
        report(ToolWork.cross(FACE, 0, 2), ToolWork.end(DRILL, 0, 2)).meetings().get(0);
    assertThat(meeting.words())
        .contains("position 1 at ", " of 1.1 (face face)", "meets ", "mm² of the section");
    assertThat(meeting.atS()).isBetween(0.0, 2.0);
    assertThat(meeting.nearRMm()).isLessThanOrEqualTo(4);
  }

  @Test
  void everyPairIsCounted() {
    ClearanceReport two = report(ToolWork.cross(TURN, 0, 2), ToolWork.end(DRILL, 0, 2));
    assertThat(two.pairCount()).as("2 work, 2 piece, 2 collet, 1 tools").isEqualTo(7);
    assertThat(two.isClear()).isTrue();
  }

  @Test
  void drillStandsOutPastACrossToolThatWorksAtTheSameTime() {
    Operation thin =
        ToolWork.operation(
            "thin",
            OperationKind.ROUGH_TURN,
            ToolKind.TURNING_ROUGH,
            30,
            CutRegion.rectangle(0, 20, 10, 16));
    double alone = overhangMm(ToolWork.end(DRILL, 0, 2));
    double beside = overhangMm(ToolWork.end(DRILL, 0, 2), ToolWork.cross(thin, 0, 2));
    double after = overhangMm(ToolWork.end(DRILL, 0, 2), ToolWork.cross(thin, 3, 4));
    assertThat(beside).isGreaterThan(alone + 5);
    assertThat(after).isEqualTo(alone);
    assertThat(report(ToolWork.end(DRILL, 0, 2), ToolWork.cross(thin, 0, 2)).meetings())
        .noneMatch(meeting -> meeting.kind() == Kind.TOOLS);
  }

  @Test
  void pointedInsertCannotReachBehindAShoulderButABladeCan() {
    CutRegion neck = CutRegion.rectangle(20, 32, 10, 16);
    Operation insert =
        ToolWork.operation("neck", OperationKind.FINISH_TURN, ToolKind.TURNING_FINISH, 20, neck);
    Operation blade =
        ToolWork.operation("neck", OperationKind.FORM_TURN, ToolKind.GROOVING, 3, neck);
    assertThat(kinds(report(ToolWork.cross(insert, 0, 2)))).contains(Kind.EDGE_AND_PIECE);
    assertThat(report(ToolWork.cross(blade, 0, 2)).isClear()).isTrue();
  }

  @Test
  void bladeCloseToTheColletMeetsItsNose() {
    Operation behind =
        ToolWork.operation(
            "behind",
            OperationKind.GROOVE,
            ToolKind.GROOVING,
            3,
            CutRegion.rectangle(44, 47, 12, 16));
    assertThat(kinds(report(ToolWork.cross(behind, 0, 2)))).contains(Kind.TOOL_AND_HOLDING);
  }

  @Test
  void shortHolderMeetsTheWork() {
    Operation deep =
        ToolWork.operation(
            "deep", OperationKind.GROOVE, ToolKind.GROOVING, 1, CutRegion.rectangle(10, 11, 2, 16));
    assertThat(report(ToolWork.cross(deep, 0, 2)).meetings())
        .as("a blade of 1 mm cannot stand out 13 mm: it is drawn as long as the cut needs")
        .noneMatch(meeting -> meeting.kind() == Kind.TOOL_AND_WORK);
  }

  @Test
  void pairsOfTheRouteAreFoundFromOutlines() {
    List<PairRule> pairs = MeetingPairs.of(List.of(FACE, DRILL, TURN, OFF), PART, BAR);
    assertThat(pairs)
        .extracting(pair -> pair.oneId() + " " + pair.otherId())
        .contains("face drill")
        .doesNotContain("turn drill");
    assertThat(pairs).allMatch(pair -> pair.kind() == PairRule.Kind.NOT_TOGETHER);
    assertThat(pairs.get(0).reason()).contains("sweep the same place");
  }

  private static List<Kind> kinds(ClearanceReport report) {
    return report.meetings().stream().map(Meeting::kind).toList();
  }

  private static double overhangMm(Job... jobs) {
    return ToolWork.tools(PART, BAR, jobs).tools().stream()
        .filter(tool -> tool.operation().id().equals("drill"))
        .findFirst()
        .orElseThrow()
        .tool()
        .overhangMm();
  }

  private static ClearanceReport report(Job... jobs) {
    PositionTools tools = ToolWork.tools(PART, BAR, jobs);
    List<Operation> all =
        java.util.stream.Stream.concat(
                List.of(jobs).stream().map(Job::operation), java.util.stream.Stream.of(OFF))
            .toList();
    WorkpieceStates states = WorkpieceStates.of(BAR, PART, List.of(new PositionWork(1, all)));
    return ClearanceCheck.of(PART, BAR, ToolWork.machine(), states, List.of(tools), 140);
  }
}
