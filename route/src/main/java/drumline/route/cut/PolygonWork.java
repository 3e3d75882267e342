package drumline.route.cut;

import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.livetool.PolygonTurning;
import drumline.cutting.turning.TurningCut;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.feature.Flats;
import drumline.shop.operation.Loads;

/**
 * Flats turned by a cutter geared to the spindle.
 *
 * <p>Each flat is met once in a turn of the work, so the chip is as thick as the axial feed and at
 * mid-flat as wide as the flat is deep: Fc = kc(f)·a·f, one insert at a time, on the half size
 * across flats. Source: [BASIS] 2.7 for path and speed; the load is an estimate derived from it.
 */
public final class PolygonWork {
  private PolygonWork() {}

  /**
   * One pass along the flats; the cutting speed of the window limits the spindle, since the insert
   * passes the flat at the sum of both movements.
   *
   * @param diameterMm diameter that the flats are cut on
   * @param tipRadiusMm radius of the insert tips about the cutter's axis
   */
  public static Cut turn(
      RouteDraft draft, ToolChoice choice, Flats flats, double diameterMm, double tipRadiusMm) {
    PolygonTurning polygon = new PolygonTurning(flats.acrossMm(), flats.count(), tipRadiusMm);
    double high = polygon.workRevPerMin(choice.window().speedHighMPerMin());
    double low = polygon.workRevPerMin(choice.window().speedLowMPerMin());
    double top = draft.allowance("liveToolTop") / 2;
    SpeedWindow speeds =
        new SpeedWindow(low, high, "cutting speed of the polygon cutter")
            .atMost(top, "cutter turns twice as fast as the spindle");
    double feed = draft.allowance("polygonFeed");
    double way = flats.toZMm() - flats.fromZMm() + draft.allowance("cutStart");
    double depth = (diameterMm - flats.acrossMm()) / 2;
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(way / feed, 0)
        .on(flats.acrossMm() + 4 * tipRadiusMm) // counts the speed of both movements
        .chip(feed, depth, 1)
        .way(way, draft.allowance("rapidApproach"))
        .with(loads(draft, polygon, depth, feed, speeds.highestRevPerMin()));
  }

  private static Loads loads(
      RouteDraft draft, PolygonTurning polygon, double depth, double feed, double revPerMin) {
    double across = polygon.acrossFlatsMm();
    var load =
        new TurningCut(
                across,
                new ChipSection(depth, feed, 90),
                ForceSplit.SQUARE_EDGE,
                TurningCut.Along.AXIS)
            .load(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(ChipCompression.MILLING),
                revPerMin);
    double toolPower = load.mainForceN() * polygon.cuttingMPerMin(revPerMin) / 60_000;
    return new Loads(
        load.mainForceN(),
        load.axialForceN(),
        load.radialForceN(),
        load.torqueNm(),
        toolPower,
        load.axialForceN());
  }
}
