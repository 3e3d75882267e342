package drumline.route.turning;

import drumline.route.cut.Cut;
import drumline.route.cut.TurningWork;
import drumline.route.cut.TurningWork.Side;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Surface;
import drumline.route.turning.OutsideProfile.Face;
import drumline.shop.contour.OutsideStep;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.OperationKind;
import drumline.shop.tooling.ToolKind;
import java.util.List;

/** The finishing cut along one outside step. */
final class FinishCut {
  private FinishCut() {}

  /**
   * Writes the cut into the draft.
   *
   * @param kind kind of tool that reaches the step
   * @param sizeMm size of the tool: diameter of the work, or width of a blade
   * @param ruleId rule that asks for it
   * @param title as the process sheet says it
   * @param skin what it takes away
   */
  static void write(
      RouteDraft draft,
      Face face,
      ToolKind kind,
      double sizeMm,
      String ruleId,
      String title,
      CutRegion skin) {
    OutsideStep step = face.step();
    double diameter = 2 * face.turnedRadiusMm();
    draft
        .tool(step.id(), kind, CuttingProcess.TURN_FINISH, sizeMm)
        .ifPresent(
            choice -> {
              Cut cut =
                  TurningWork.finish(
                      draft,
                      choice,
                      Side.OUTSIDE,
                      OutsideProfile.contourMm(step),
                      Surface.of(draft, step).cutRoughnessUm(OperationKind.FINISH_TURN),
                      diameter);
              new OperationMaker(draft, OperationKind.FINISH_TURN, step.id(), ruleId)
                  .title(title)
                  .because(because(draft, ruleId, step))
                  .removes(List.of(skin))
                  .add(choice, cut);
            });
  }

  private static String because(RouteDraft draft, String ruleId, OutsideStep step) {
    return ruleId.equals("finish-by-grade")
        ? Surface.of(draft, step).because(OperationKind.ROUGH_TURN, OperationKind.FINISH_TURN)
        : "";
  }
}
