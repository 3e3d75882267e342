package drumline.route.hole;

import static drumline.route.feature.Words.mm;

import drumline.route.cut.SlotWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.shop.contour.End;
import drumline.shop.feature.SlottedForm;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.Locale;

/** Inside forms cut stroke by stroke: rule {@code slot-strokes}. */
public final class SlottedMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public SlottedMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(SlottedForm.class).forEach(this::slotted);
  }

  private void slotted(SlottedForm form) {
    draft
        .tool(form.id(), ToolKind.SLOTTING, CuttingProcess.SLOT, form.widthMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.SLOT, form.id(), "slot-strokes")
                    .title(
                        "slot "
                            + form.form().name().toLowerCase(Locale.ROOT)
                            + " "
                            + mm(form.widthMm()))
                    .end(form.end() == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK)
                    .from(SlideKind.END)
                    .needs(SpindleCondition.HELD, Equipment.C_AXIS)
                    .add(
                        choice, SlotWork.slot(draft, choice, form, 0, form.radialDepthMm(), true)));
  }
}
