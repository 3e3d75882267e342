package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.milling.CutterRunIn;
import drumline.cutting.milling.MillingChip;
import drumline.cutting.milling.MillingChip.Place;
import drumline.cutting.milling.MillingCut;
import drumline.cutting.milling.MillingPass;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.operation.Loads;

/** Cuts of driven end mills with the spindle held. */
public final class MillingWork {
  private MillingWork() {}

  /**
   * What is milled at one angle of the spindle.
   *
   * @param lengthMm way of the cutter along the surface, without run-in
   * @param widthMm width of cut across the cutter, at most its diameter
   * @param depthMm depth along the cutter's axis
   * @param placeCount angles at which the same is done
   * @param armMm distance from the work's axis at which the cutter's force turns the work
   * @param centred whether the cut lies under the middle of the cutter
   */
  public record Shape(
      double lengthMm,
      double widthMm,
      double depthMm,
      int placeCount,
      double armMm,
      boolean centred) {}

  /** Milling in as many depths as the window asks for. */
  public static Cut mill(RouteDraft draft, ToolChoice choice, Shape shape) {
    double cutter = choice.tool().sizeMm();
    int teeth = Math.max(2, choice.tool().family().teethCount());
    double toothFeed = choice.window().feedHigh();
    int passes =
        Math.max(1, (int) Math.ceil(shape.depthMm() / choice.window().depthHighMm() - 1e-9));
    double width = Math.min(shape.widthMm(), cutter);
    double runIn =
        shape.centred()
            ? CutterRunIn.faceMm(cutter, width)
            : CutterRunIn.circumferenceMm(cutter, width);
    double revPerMin = DrivenTool.revPerMin(draft, choice, cutter);
    MillingPass pass =
        new MillingPass(shape.lengthMm(), runIn, draft.allowance("cutOverrun"), toothFeed, teeth);
    int cuts = passes * shape.placeCount();
    double fixed =
        cuts * pass.timeS(revPerMin)
            + (cuts - shape.placeCount()) * draft.allowance("returnStroke")
            + (shape.placeCount() - 1) * draft.allowance("holdIndex");
    CuttingLoad load = load(draft, choice, shape, passes, width, revPerMin);
    double way = cuts * (shape.lengthMm() + runIn);
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(cutter)
        .chip(toothFeed * teeth, shape.depthMm() / passes, cuts)
        .way(way, draft.allowance("rapidApproach"))
        .with(
            new Loads(
                load.mainForceN(),
                load.mainForceN(),
                load.mainForceN(),
                load.mainForceN() * shape.armMm() / 1000,
                load.powerKw(),
                load.mainForceN()));
  }

  private static CuttingLoad load(
      RouteDraft draft,
      ToolChoice choice,
      Shape shape,
      int passes,
      double width,
      double revPerMin) {
    Place place = shape.centred() ? Place.CENTRED : Place.ONE_SIDE;
    MillingChip chip =
        new MillingChip(choice.tool().sizeMm(), width, choice.window().feedHigh(), 90, place);
    int teeth = Math.max(2, choice.tool().family().teethCount());
    return new MillingCut(chip, teeth, shape.depthMm() / passes, 30)
        .load(
            SpecBuilder.constants(draft.inquiry().material()),
            SpecBuilder.worn(ChipCompression.MILLING),
            revPerMin);
  }
}
