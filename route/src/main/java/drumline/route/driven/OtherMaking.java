package drumline.route.driven;

import static drumline.route.feature.Words.mm;

import drumline.route.cut.LightWork;
import drumline.route.cut.SlotWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Places;
import drumline.shop.contour.End;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.SlottedForm;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.Locale;

/**
 * Knurls, slotted forms and engraving: rules {@code knurl}, {@code slot-strokes}, {@code engrave}.
 */
public final class OtherMaking {
  private static final double TIP_MM = 0.2;

  private final RouteDraft draft;

  /** For a draft. */
  public OtherMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(Knurl.class).forEach(this::knurl);
    draft.inquiry().part().features(SlottedForm.class).forEach(this::slotted);
    draft.inquiry().part().features(Engraving.class).forEach(this::engraving);
  }

  private void knurl(Knurl knurl) {
    double length = knurl.toZMm() - knurl.fromZMm();
    double diameter = Places.outsideDiameterMm(draft.inquiry().part(), knurl.fromZMm(), length);
    draft
        .tool(knurl.id(), ToolKind.KNURLING, CuttingProcess.KNURL, diameter)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.KNURL, knurl.id(), "knurl")
                    .title(
                        "knurl "
                            + knurl.form().name().toLowerCase(Locale.ROOT)
                            + " "
                            + mm(knurl.pitchMm()))
                    .add(choice, LightWork.knurl(draft, choice, length, diameter)));
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

  private void engraving(Engraving engraving) {
    boolean outside = engraving.place() == Engraving.Place.OUTSIDE;
    WorkEnd end = engraving.place() == Engraving.Place.BACK_FACE ? WorkEnd.BACK : WorkEnd.FRONT;
    draft
        .tool(engraving.id(), ToolKind.ENGRAVING, CuttingProcess.ENGRAVE, TIP_MM)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.ENGRAVE, engraving.id(), "engrave")
                    .title("engrave “" + engraving.text() + "”")
                    .end(end)
                    .from(outside ? SlideKind.CROSS : SlideKind.END)
                    .needs(SpindleCondition.C_AXIS, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(choice, LightWork.engrave(draft, choice, engraving)));
  }
}
