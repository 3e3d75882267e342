package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.slotting.SlotStrokes;
import drumline.cutting.slotting.SlottingCut;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.feature.SlottedForm;
import drumline.shop.operation.Loads;

/** Cuts of a slotting tool that moves to and fro with the spindle held. */
public final class SlotWork {
  private SlotWork() {}

  /**
   * A part of a slotted form between two depths across the wall.
   *
   * @param fromMm depth that is cut already
   * @param toMm depth to reach
   * @param last whether spring strokes end it
   */
  public static Cut slot(
      RouteDraft draft,
      ToolChoice choice,
      SlottedForm form,
      double fromMm,
      double toMm,
      boolean last) {
    double infeed = choice.window().feedHigh();
    SlotStrokes strokes =
        new SlotStrokes(
            toMm - fromMm,
            infeed,
            last ? (int) draft.allowance("slotSpring") : 0,
            form.lengthMm(),
            draft.allowance("slotClearance"),
            draft.allowance("slotCutting"),
            draft.allowance("slotReturn"),
            draft.allowance("slotTurn"),
            form.form().sideCount(),
            draft.allowance("holdIndex"),
            0);
    double width = edgeWidthMm(form);
    CuttingLoad load =
        new SlottingCut(width, infeed, form.boreDiameterMm() / 2, 0.3)
            .load(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(ChipCompression.SLOTTING),
                draft.allowance("slotCutting"));
    int all = strokes.strokesCount() * form.form().sideCount();
    return new SpecBuilder(choice)
        .time(0, strokes.timeS())
        .on(0)
        .chip(infeed, toMm - fromMm, all)
        .way(all * form.lengthMm(), draft.allowance("drillApproach"))
        .with(
            new Loads(
                load.mainForceN(),
                load.mainForceN(),
                load.radialForceN(),
                load.torqueNm(),
                0,
                load.mainForceN()));
  }

  /** Width of the edge: the keyway's, or about the corner that stands beyond the bore. */
  private static double edgeWidthMm(SlottedForm form) {
    if (form.form() == SlottedForm.Form.KEYWAY) {
      return form.widthMm();
    }
    double side = form.widthMm() * Math.tan(Math.PI / form.form().sideCount());
    return Math.min(side, 2 * form.radialDepthMm());
  }
}
