package drumline.route.turning;

import static drumline.route.feature.Words.dia;
import static drumline.route.feature.Words.mm;

import drumline.route.cut.PlungeWork;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Places;
import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.List;

/** Outside, inside and face grooves: rule {@code groove}. */
public final class GrooveMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public GrooveMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    for (Groove groove : draft.inquiry().part().features(Groove.class)) {
      switch (groove.place()) {
        case OUTSIDE -> outside(groove);
        case INSIDE -> inside(groove);
        case FACE -> face(groove);
      }
    }
  }

  private void outside(Groove groove) {
    double surface =
        Places.outsideDiameterMm(draft.inquiry().part(), groove.atMm(), groove.widthMm());
    double depth = (surface - groove.bottomDiameterMm()) / 2;
    double bottom = groove.bottomDiameterMm();
    draft
        .tool(
            groove.id(),
            ToolKind.GROOVING,
            CuttingProcess.GROOVE,
            blade(groove.widthMm(), draft.allowance("recessBlade")))
        .ifPresent(
            choice -> {
              Reach.check(
                  draft,
                  choice,
                  depth,
                  choice.tool().sizeMm(),
                  "Maybe take a blade with more reach.");
              new OperationMaker(draft, OperationKind.GROOVE, groove.id(), "groove")
                  .title("groove " + mm(groove.widthMm()) + " to " + dia(bottom))
                  .removes(
                      List.of(
                          CutRegion.rectangle(
                              groove.atMm(),
                              groove.atMm() + groove.widthMm(),
                              bottom / 2,
                              surface / 2 + 0.05)))
                  .add(
                      choice,
                      PlungeWork.recess(
                          draft,
                          choice,
                          groove.widthMm(),
                          depth,
                          surface,
                          draft.allowance("rapidApproach")));
            });
  }

  private void inside(Groove groove) {
    double surface = Places.boreDiameterMm(draft.inquiry().part(), groove.end(), groove.atMm());
    double depth = (groove.bottomDiameterMm() - surface) / 2;
    double near = zMm(groove, groove.atMm());
    double far = zMm(groove, groove.atMm() + groove.widthMm());
    draft
        .tool(
            groove.id(),
            ToolKind.INSIDE_GROOVING,
            CuttingProcess.GROOVE,
            blade(groove.widthMm(), draft.allowance("blindBlade")))
        .ifPresent(
            choice -> {
              Reach.check(
                  draft,
                  choice,
                  depth,
                  choice.tool().sizeMm(),
                  "Maybe take a blade with more reach.");
              new OperationMaker(draft, OperationKind.INSIDE_GROOVE, groove.id(), "groove")
                  .title(
                      "inside groove "
                          + mm(groove.widthMm())
                          + " to "
                          + dia(groove.bottomDiameterMm()))
                  .end(end(groove))
                  .from(SlideKind.END)
                  .removes(
                      List.of(
                          CutRegion.rectangle(
                              Math.min(near, far),
                              Math.max(near, far),
                              0,
                              groove.bottomDiameterMm() / 2)))
                  .add(
                      choice,
                      PlungeWork.recess(
                          draft,
                          choice,
                          groove.widthMm(),
                          depth,
                          groove.bottomDiameterMm(),
                          draft.allowance("drillApproach")));
            });
  }

  private void face(Groove groove) {
    double inner = groove.atMm() / 2;
    double outer = inner + groove.widthMm();
    double near = zMm(groove, 0);
    double far = zMm(groove, groove.depthMm());
    draft
        .tool(
            groove.id(),
            ToolKind.FACE_GROOVING,
            CuttingProcess.GROOVE,
            blade(groove.widthMm(), draft.allowance("recessBlade")))
        .ifPresent(
            choice -> {
              Reach.check(
                  draft,
                  choice,
                  groove.depthMm(),
                  choice.tool().sizeMm(),
                  "Maybe take a blade with more reach.");
              new OperationMaker(draft, OperationKind.FACE_GROOVE, groove.id(), "groove")
                  .title(
                      "face groove "
                          + dia(2 * inner)
                          + "–"
                          + dia(2 * outer)
                          + " × "
                          + mm(groove.depthMm()))
                  .end(end(groove))
                  .from(SlideKind.END)
                  .removes(
                      List.of(
                          CutRegion.rectangle(
                              Math.min(near, far), Math.max(near, far), inner, outer)))
                  .add(
                      choice,
                      PlungeWork.recess(
                          draft,
                          choice,
                          groove.widthMm(),
                          groove.depthMm(),
                          2 * outer,
                          draft.allowance("drillApproach")));
            });
  }

  private double zMm(Groove groove, double depthMm) {
    return groove.end() == End.FRONT ? depthMm : draft.inquiry().part().lengthMm() - depthMm;
  }

  private static WorkEnd end(Groove groove) {
    return groove.end() == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK;
  }

  /** The blade for a width: the groove's own where it is narrow, else a standard one. */
  private static double blade(double widthMm, double mostMm) {
    return widthMm <= mostMm ? widthMm : Math.min(mostMm, Math.floor(widthMm / 1.5 * 2) / 2);
  }
}
