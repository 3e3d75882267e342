package drumline.route.cut;

import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.feature.Engraving;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.operation.Loads;
import drumline.shop.tooling.Tool;

/** Knurling, engraving and deburring. */
public final class LightWork {
  /** Usual width of a knurling wheel; from memory. */
  private static final double WHEEL_MM = 8;

  private LightWork() {}

  /**
   * Knurling by plunging, in a set number of turns, once for each width of the wheel.
   *
   * @param lengthMm length of the band
   * @param diameterMm diameter of the band
   */
  public static Cut knurl(RouteDraft draft, ToolChoice choice, double lengthMm, double diameterMm) {
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameterMm);
    double wheel = WHEEL_MM;
    double feed = choice.window().feedHigh();
    double axial = lengthMm > wheel ? (lengthMm - wheel) / feed : 0;
    double press = 0.15 * draft.inquiry().material().tensileMpa() * Math.min(lengthMm, wheel);
    double torque = 0.1 * press * diameterMm / 2000;
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(draft.allowance("knurlTurns") + axial, 0)
        .on(diameterMm)
        .chip(feed, 0, 1)
        .way(lengthMm, draft.allowance("rapidApproach"))
        .with(new Loads(0.1 * press, 0, press, torque, 0, press));
  }

  /** Engraving: path by the mean length of a character, with a lift and a plunge for strokes. */
  public static Cut engrave(RouteDraft draft, ToolChoice choice, Engraving engraving) {
    int characters = (int) engraving.text().chars().filter(c -> c != ' ').count();
    double path = characters * engraving.heightMm() * draft.allowance("engravePath");
    double fixed =
        60 * path / draft.allowance("engraveFeed")
            + 2 * characters * draft.allowance("engraveLift");
    double revPerMin = draft.allowance("liveToolTop");
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(choice.tool().sizeMm())
        .chip(draft.allowance("engraveFeed") / revPerMin, engraving.depthMm(), 1)
        .way(path, draft.allowance("rapidApproach"))
        .with(Loads.NONE);
  }

  /** A driven brush held against turning work for a set time. */
  public static Cut brush(RouteDraft draft, Tool brush) {
    return new SpecBuilder(brushing(brush))
        .time(0, draft.allowance("brushTime"))
        .driven(1500)
        .on(brush.sizeMm())
        .chip(0, 0, 1)
        .way(0, draft.allowance("rapidApproach"))
        .with(Loads.NONE);
  }

  /** Speeds and life of a brush; from memory. */
  public static ToolChoice brushing(Tool brush) {
    return new ToolChoice(
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
    double fixed =
        60 * pathMm / draft.allowance("deburrFeed")
            + placeCount * draft.allowance("engraveLift")
            + (placeCount - 1) * draft.allowance("holdIndex");
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(choice.tool().sizeMm())
        .chip(draft.allowance("deburrFeed") / revPerMin, 0.2, placeCount)
        .way(pathMm, draft.allowance("rapidApproach"))
        .with(Loads.NONE);
  }
}
