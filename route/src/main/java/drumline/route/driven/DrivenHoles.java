package drumline.route.driven;

import static drumline.route.feature.Words.dia;

import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.route.cut.HoleWork;
import drumline.route.cut.ThreadWork;
import drumline.route.cut.ThreadWork.Tapping;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.thread.ThreadSize;
import drumline.shop.tooling.ToolKind;

/** Cross holes and face holes with driven tools: rules {@code cross-hole}, {@code face-holes}. */
public final class DrivenHoles {
  private final RouteDraft draft;

  /** For a draft. */
  public DrivenHoles(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(CrossHole.class).forEach(this::cross);
    draft.inquiry().part().features(FaceHoles.class).forEach(this::face);
  }

  private void cross(CrossHole hole) {
    boolean through = hole.reach() == CrossHole.Reach.THROUGH;
    DepthTo depthTo = through ? DepthTo.THROUGH : DepthTo.FULL_DIAMETER;
    int holes = through && hole.count() % 2 == 0 ? hole.count() / 2 : hole.count();
    draft
        .tool(hole.id(), ToolKind.DRIVEN_DRILL, CuttingProcess.DRILL, hole.diameterMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.CROSS_DRILL, hole.id(), "cross-hole")
                    .title("cross drill " + count(hole.count()) + dia(hole.diameterMm()))
                    .needs(SpindleCondition.HELD, lean(hole))
                    .add(
                        choice, HoleWork.driven(draft, choice, hole.depthMm(), depthTo, holes, 0)));
    ThreadSize thread = hole.thread();
    if (thread != null) {
      tap(
          hole.id(),
          OperationKind.CROSS_TAP,
          "cross-hole",
          thread,
          hole.depthMm(),
          hole.count(),
          0,
          WorkEnd.FRONT,
          SlideKind.CROSS);
    }
  }

  private static Equipment[] lean(CrossHole hole) {
    return hole.leanDeg() == 0
        ? new Equipment[] {Equipment.LIVE_TOOL, Equipment.C_AXIS}
        : new Equipment[] {Equipment.LIVE_TOOL, Equipment.C_AXIS, Equipment.Y_AXIS};
  }

  private void face(FaceHoles holes) {
    WorkEnd end = holes.end() == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK;
    double arm = holes.pitchCircleMm() / 2;
    draft
        .tool(holes.id(), ToolKind.DRIVEN_DRILL, CuttingProcess.DRILL, holes.diameterMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.FACE_DRILL, holes.id(), "face-holes")
                    .title(
                        "drill "
                            + count(holes.count())
                            + dia(holes.diameterMm())
                            + " on "
                            + dia(holes.pitchCircleMm()))
                    .end(end)
                    .from(SlideKind.END)
                    .needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(
                        choice,
                        HoleWork.driven(
                            draft,
                            choice,
                            holes.depthMm(),
                            DepthTo.FULL_DIAMETER,
                            holes.count(),
                            arm)));
    ThreadSize thread = holes.thread();
    if (thread != null) {
      tap(
          holes.id(),
          OperationKind.FACE_TAP,
          "face-holes",
          thread,
          0.8 * holes.depthMm(),
          holes.count(),
          arm,
          end,
          SlideKind.END);
    }
  }

  private void tap(
      String id,
      OperationKind kind,
      String rule,
      ThreadSize thread,
      double lengthMm,
      int count,
      double armMm,
      WorkEnd end,
      SlideKind slide) {
    draft
        .tool(id, ToolKind.DRIVEN_TAP, CuttingProcess.TAP, thread.majorMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, kind, id, rule)
                    .title("tap " + count(count) + thread.designation())
                    .end(end)
                    .from(slide)
                    .needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(
                        choice,
                        ThreadWork.tap(
                            draft, choice, thread, lengthMm, count, armMm, Tapping.CUTTING)));
  }

  private static String count(int count) {
    return count == 1 ? "" : count + " × ";
  }
}
