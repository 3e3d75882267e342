package drumline.route.parting;

import drumline.route.cut.PlungeWork;
import drumline.route.cut.TurningWork;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.ThroughBore;
import drumline.route.feature.Words;
import drumline.shop.contour.BoreStep;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import drumline.shop.tooling.ToolKind;
import java.util.List;

/** Parting, and the face that it leaves: rules {@code cut-off-last}, {@code back-face}. */
public final class CutOffMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public CutOffMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /**
   * Width of the parting blade in mm, in half millimetres.
   *
   * <p>w = 0.6·√r + 0.5, r the blade's reach in mm: from the bar's outside to its centre or bore.
   * That is 2.4 mm for bar of 20 mm and 3.2 mm for 40 mm, the usual 2 to 3 mm. Source: [BASIS] 2.9,
   * from memory, weak; the reach is taken for its D, since D gives more than the usual.
   */
  public static double kerfMm(RouteDraft draft) {
    double outer = draft.inquiry().bar().acrossCornersMm();
    double reach = (outer - boreAtCutMm(draft)) / 2;
    double wide = draft.allowance("kerfRoot") * Math.sqrt(reach) + draft.allowance("kerfBase");
    double half = Math.round(wide * 2) / 2.0;
    return Math.max(draft.allowance("kerfLeast"), Math.min(draft.allowance("kerfMost"), half));
  }

  /** Bore at the plane where the piece is parted, 0 where it is solid there. */
  public static double boreAtCutMm(RouteDraft draft) {
    Part part = draft.inquiry().part();
    return part.frontBore().stream()
        .filter(step -> ThroughBore.is(part, step))
        .mapToDouble(BoreStep::endDiameterMm)
        .reduce(draft.inquiry().bar().boreMm(), Math::max);
  }

  /** Writes them into the draft. */
  public void write() {
    double outer = draft.inquiry().bar().acrossCornersMm();
    double inner = boreAtCutMm(draft);
    double kerf = kerfMm(draft);
    double length = draft.inquiry().part().lengthMm();
    draft
        .tool("cut-off", ToolKind.CUT_OFF, CuttingProcess.CUT_OFF, kerf)
        .ifPresent(
            choice -> {
              Reach.check(
                  draft, choice, (outer - inner) / 2, kerf, "Maybe take a wider blade, in a file.");
              new OperationMaker(draft, OperationKind.CUT_OFF, "piece", "cut-off-last")
                  .title("cut off, blade " + Words.mm(kerf) + " mm")
                  .removes(List.of(CutRegion.rectangle(length, length + kerf, 0, outer / 2 + 1)))
                  .add(choice, PlungeWork.cutOff(draft, choice, outer, inner));
            });
    if (needsBackFace()) {
      backFace();
    }
  }

  private boolean needsBackFace() {
    Part part = draft.inquiry().part();
    boolean tight = part.lengthTolerance().widthMm() <= 0.1;
    boolean holes = !part.backBore().isEmpty();
    boolean fine = part.roughnessRaUm() > 0 && part.roughnessRaUm() <= 1.6;
    return tight || holes || fine;
  }

  private void backFace() {
    Part part = draft.inquiry().part();
    double outer = part.outside().get(part.outside().size() - 1).endDiameterMm();
    double inner = boreAtCutMm(draft);
    double stock = draft.allowance("backFaceStock");
    draft
        .tool("back-face", ToolKind.TURNING_FINISH, CuttingProcess.TURN_FINISH, outer)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.FACE, "back-face", "back-face")
                    .title("face back")
                    .end(WorkEnd.BACK)
                    .add(
                        choice,
                        TurningWork.face(
                            draft, choice, stock, outer, inner, part.roughnessRaUm())));
  }
}
