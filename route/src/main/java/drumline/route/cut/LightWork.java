package drumline.route.cut;

import drumline.cutting.finish.KnurlPass;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.lettering.Lettering;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.material.Confidence;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.operation.Loads;
import drumline.shop.tooling.Tool;

/** Knurling, engraving and deburring. */
public final class LightWork {
  private LightWork() {}

  /**
   * Knurling by plunging, in a set number of turns, once for each width of the wheel.
   *
   * @param lengthMm length of the band
   * @param diameterMm diameter of the band
   */
  public static Cut knurl(RouteDraft draft, ToolChoice choice, double lengthMm, double diameterMm) {
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameterMm);
    double wheel = draft.allowance("knurlWheel");
    double feed = choice.window().feedHigh();
    KnurlPass pass =
        new KnurlPass(draft.allowance("knurlTurns"), Math.max(0, lengthMm - wheel), feed);
    double press =
        draft.allowance("knurlPressure")
            * draft.inquiry().material().tensileMpa()
            * Math.min(lengthMm, wheel);
    double drag = draft.allowance("knurlDrag") * press;
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(pass.revolutionsCount(), 0)
        .on(diameterMm)
        .chip(feed, 0, 1)
        .way(lengthMm, draft.allowance("rapidApproach"))
        .with(new Loads(drag, 0, press, drag * diameterMm / 2000, 0, press));
  }

  /** Engraving along the strokes of the lettering, with a lift and a plunge for each stroke. */
  public static Cut engrave(
      RouteDraft draft, ToolChoice choice, Lettering lettering, double depthMm) {
    double feedMmPerMin = draft.allowance("engraveFeed");
    double fixed = lettering.pass(2 * draft.allowance("engraveLift"), 0).timeS(feedMmPerMin);
    double revPerMin = draft.allowance("liveToolTop");
    double feed = feedMmPerMin / revPerMin;
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(choice.tool().sizeMm())
        .chip(feed, depthMm, 1)
        .way(lettering.wayMm(), draft.allowance("rapidApproach"))
        .with(light(draft, choice, depthMm, feed, revPerMin));
  }

  /** A small point that takes a section as wide as it is deep, once in a turn of the tool. */
  private static Loads light(
      RouteDraft draft, ToolChoice choice, double depthMm, double feed, double revPerMin) {
    double force =
        KienzleForce.specificForceMpa(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(ChipCompression.MILLING),
                feed)
            * depthMm
            * feed;
    double speed = Math.PI * choice.tool().sizeMm() * revPerMin / 1000;
    return new Loads(force, force, force, 0, force * speed / 60_000, force);
  }

  /** A driven brush held against turning work for a set time. */
  public static Cut brush(RouteDraft draft, ToolChoice choice) {
    return new SpecBuilder(choice)
        .time(0, draft.allowance("brushTime"))
        .driven(draft.allowance("brushSpeed"))
        .on(choice.tool().sizeMm())
        .chip(0, 0, 1)
        .way(0, draft.allowance("rapidApproach"))
        .with(Loads.NONE);
  }

  /** Speeds and life of a brush; from memory. */
  public static ToolChoice brushing(String featureId, Tool brush) {
    return new ToolChoice(
        featureId,
        brush,
        new CuttingWindow(
            CuttingProcess.MILL,
            brush.family().toolMaterial(),
            60,
            190,
            0,
            0,
            0,
            new TaylorConstants(0.3, 1000),
            Confidence.WEAK,
            "life of a brush from memory"));
  }

  /**
   * A small chamfer cutter led along edges, with the spindle held.
   *
   * @param pathMm length of all edges
   * @param placeCount angles at which it works
   */
  public static Cut followEdge(RouteDraft draft, ToolChoice choice, double pathMm, int placeCount) {
    double revPerMin =
        Math.min(
            draft.allowance("liveToolTop"),
            SpeedWindow.revPerMin(choice.window().speedHighMPerMin(), choice.tool().sizeMm()));
    double feed = draft.allowance("deburrFeed") / revPerMin;
    double depth = draft.allowance("deburrDepth");
    double fixed =
        60 * pathMm / draft.allowance("deburrFeed")
            + placeCount * draft.allowance("engraveLift")
            + (placeCount - 1) * draft.allowance("holdIndex");
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(choice.tool().sizeMm())
        .chip(feed, depth, placeCount)
        .way(pathMm, draft.allowance("rapidApproach"))
        .with(light(draft, choice, depth, feed, revPerMin));
  }
}
