package drumline.route.cut;

import drumline.cutting.livetool.PolygonTurning;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.feature.Flats;
import drumline.shop.operation.Loads;

/** Flats turned by a cutter geared to the spindle. */
public final class PolygonWork {
  private static final double FEED_MM_PER_REV = 0.06;

  private PolygonWork() {}

  /**
   * One pass along the flats; the cutting speed of the window limits the spindle, since the insert
   * passes the flat at the sum of both movements.
   */
  public static Cut turn(RouteDraft draft, ToolChoice choice, Flats flats, double tipRadiusMm) {
    PolygonTurning polygon = new PolygonTurning(flats.acrossMm(), flats.count(), tipRadiusMm);
    double high = polygon.workRevPerMin(choice.window().speedHighMPerMin());
    double low = polygon.workRevPerMin(choice.window().speedLowMPerMin());
    double top = draft.allowance("liveToolTop") / 2;
    SpeedWindow speeds =
        new SpeedWindow(low, high, "cutting speed of the polygon cutter")
            .atMost(top, "cutter turns twice as fast as the spindle");
    double way = flats.toZMm() - flats.fromZMm() + draft.allowance("cutStart");
    double toolDiameter = 2 * tipRadiusMm;
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(way / FEED_MM_PER_REV, 0)
        .on(toolDiameter)
        .chip(FEED_MM_PER_REV, 0, 1)
        .way(way, draft.allowance("rapidApproach"))
        .with(Loads.NONE);
  }
}
