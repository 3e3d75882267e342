package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.parting.CutOff;
import drumline.cutting.parting.PlungeCut;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.part.Bar;

/** Cuts of blades that are fed square to the surface: grooves, recesses, parting. */
public final class PlungeWork {
  private PlungeWork() {}

  /**
   * A groove or wide recess: side by side plunges, then one pass along the bottom where it is wider
   * than the blade.
   *
   * @param widthMm width of the recess
   * @param depthMm depth below the surface
   * @param diameterMm outer diameter, on which the speed counts
   * @param approachMm way from the waiting place
   */
  public static Cut recess(
      RouteDraft draft,
      ToolChoice choice,
      double widthMm,
      double depthMm,
      double diameterMm,
      double approachMm) {
    double blade = choice.tool().sizeMm();
    double feed = choice.window().feedHigh();
    int plunges =
        1
            + (int)
                Math.max(
                    0,
                    Math.ceil((widthMm - blade) / (draft.allowance("plungeStep") * blade) - 1e-9));
    double plungeWay = plunges * (depthMm + draft.allowance("cutStart"));
    double bottomWay = plunges > 1 ? widthMm - blade : 0;
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameterMm);
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(
            (plungeWay + bottomWay) / feed + plunges * cornersCount(draft, diameterMm, feed),
            (plunges - 1) * draft.allowance("returnStroke"))
        .dwell(draft.allowance("bottomDwell"))
        .on(diameterMm)
        .chip(feed, depthMm, plunges)
        .way(plungeWay + bottomWay, approachMm)
        .with(
            SpecBuilder.acrossAxis(
                load(draft, Math.min(blade, widthMm), diameterMm, feed, speeds)));
  }

  /**
   * Parting from the bar's outside to its bore or centre, with a lesser feed near the centre.
   *
   * @param outerMm size across corners of what is parted, on which the speed counts
   * @param innerMm bore, 0 for solid work
   */
  public static Cut cutOff(RouteDraft draft, ToolChoice choice, double outerMm, double innerMm) {
    double feed = choice.window().feedHigh();
    double slow = feed * draft.allowance("cutOffReduced");
    double start = draft.allowance("cutStart");
    double over = draft.allowance("cutOffOverrun");
    double reduceBelow = Math.min(draft.allowance("cutOffReduce"), outerMm);
    CutOff cut = new CutOff(outerMm, innerMm, start, over, feed, slow, reduceBelow);
    SpeedWindow speeds = SpeedWindow.of(choice.window(), outerMm);
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(cut.revolutionsCount() + cornersCount(draft, outerMm, feed), 0)
        .on(outerMm)
        .chip(feed, (outerMm - innerMm) / 2, 1)
        .way(start + (outerMm - innerMm) / 2 + over, draft.allowance("rapidApproach"))
        .with(SpecBuilder.acrossAxis(load(draft, choice.tool().sizeMm(), outerMm, feed, speeds)));
  }

  private static CuttingLoad load(
      RouteDraft draft, double widthMm, double diameterMm, double feed, SpeedWindow speeds) {
    return new PlungeCut(widthMm, diameterMm, feed, ForceSplit.STRAIGHT_IN)
        .load(
            SpecBuilder.constants(draft.inquiry().material()),
            SpecBuilder.worn(ChipCompression.GROOVING),
            speeds.highestRevPerMin());
  }

  /**
   * Further turns of a plunge over the corners of hexagon and square bar, where the cut is
   * interrupted and the feed less; none below the flats, or in round bar.
   *
   * <p>turns = (R − r)·(1/(k·f) − 1/f), R and r half the sizes across corners and flats in mm, f
   * feed in mm/rev, k share of the feed. Source: common practice; k from memory.
   */
  private static double cornersCount(RouteDraft draft, double fromDiameterMm, double feedMmPerRev) {
    Bar bar = draft.inquiry().bar();
    double depth = (Math.min(fromDiameterMm, bar.acrossCornersMm()) - bar.sizeMm()) / 2;
    double share = draft.allowance("cornerFeed");
    return Math.max(0, depth) * (1 / share - 1) / feedMmPerRev;
  }
}
