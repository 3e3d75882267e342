package drumline.route.finish;

import static drumline.route.feature.Words.dia;

import drumline.route.cut.TurningWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Surface;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.List;

/** Rolling smooth what no cut leaves smooth enough: rule {@code burnish}. */
public final class BurnishMaking {
  private static final String RULE_ID = "burnish";

  private final RouteDraft draft;

  /** For a draft. */
  public BurnishMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes those of the outside and the front bore, each after its finishing cut. */
  public void writeFront() {
    draft.inquiry().part().outside().forEach(this::outside);
    draft.inquiry().part().frontBore().forEach(step -> inside(step, WorkEnd.FRONT));
  }

  /** Writes those of the bore from the back. */
  public void writeBack() {
    draft.inquiry().part().backBore().forEach(step -> inside(step, WorkEnd.BACK));
  }

  private void outside(OutsideStep step) {
    List<Operation> finish = draft.of(step.id(), OperationKind.FINISH_TURN);
    Surface surface = Surface.of(draft, step);
    if (!finish.isEmpty() && surface.isBurnished(OperationKind.FINISH_TURN)) {
      double diameter = step.largestDiameterMm();
      burnish(surface, diameter, step.lengthMm(), WorkEnd.FRONT, SlideKind.CROSS);
    }
  }

  private void inside(BoreStep step, WorkEnd end) {
    List<Operation> finish = draft.of(step.id(), OperationKind.FINISH_BORE, OperationKind.REAM);
    Surface surface = Surface.of(draft, step);
    if (!finish.isEmpty() && surface.isBurnished(finish.get(finish.size() - 1).kind())) {
      burnish(surface, step.largestDiameterMm(), step.lengthMm(), end, SlideKind.END);
    }
  }

  private void burnish(
      Surface surface, double diameterMm, double lengthMm, WorkEnd end, SlideKind slide) {
    TurningWork.Side side =
        slide == SlideKind.END ? TurningWork.Side.INSIDE : TurningWork.Side.OUTSIDE;
    draft
        .tool(surface.id(), ToolKind.BURNISHING, CuttingProcess.BURNISH, diameterMm)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.BURNISH, surface.id(), RULE_ID)
                    .title("burnish " + dia(diameterMm, lengthMm))
                    .because(
                        surface.because(
                            side == TurningWork.Side.INSIDE
                                ? OperationKind.FINISH_BORE
                                : OperationKind.FINISH_TURN,
                            OperationKind.BURNISH))
                    .end(end)
                    .from(slide)
                    .add(choice, TurningWork.burnish(draft, choice, side, lengthMm, diameterMm)));
  }
}
