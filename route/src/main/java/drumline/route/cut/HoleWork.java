package drumline.route.cut;

import drumline.cutting.drilling.DrillPass;
import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drilling.ReamPass;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.CuttingLoad;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.material.ToolMaterial;
import drumline.shop.operation.Loads;

/** Cuts of drills, counterbores and reamers on the axis, in the turning work. */
public final class HoleWork {
  private HoleWork() {}

  /** How holes lie to the work's axis: a driven tool's torque turns the work only along it. */
  public enum Lie {
    /** Along the axis, on it or beside it. */
    ALONG_AXIS,
    /** From the side. */
    ACROSS_AXIS
  }

  /**
   * Drilling from a depth that is reached already.
   *
   * @param lengthMm length to the full diameter that this drill makes
   * @param depthTo whether the point comes out
   * @param first whether this drill meets solid work, so that its point must enter
   */
  public static Cut drill(
      RouteDraft draft, ToolChoice choice, double lengthMm, DepthTo depthTo, boolean first) {
    double diameter = choice.tool().sizeMm();
    double feed = DrillFeed.mmPerRev(draft, choice, diameter);
    double start = draft.allowance("cutStart");
    DrillPass pass =
        DrillPass.solid(
            diameter,
            pointAngle(choice),
            lengthMm,
            first || depthTo == DepthTo.THROUGH ? depthTo : DepthTo.TIP,
            start,
            feed);
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameter);
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(pass.revolutionsCount(), 0)
        .on(diameter)
        .chip(feed, diameter / 2, 1)
        .way(pass.travelMm(), draft.allowance("drillApproach"))
        .with(SpecBuilder.alongAxis(load(draft, choice, diameter, 0, feed, speeds)));
  }

  /** Spotting to a diameter, with a point of 90°, so that the mouth gets its chamfer too. */
  public static Cut spot(RouteDraft draft, ToolChoice choice, double mouthMm) {
    double feed = draft.allowance("spotFeed") * DrillFeed.mmPerRev(draft, choice, mouthMm);
    double way = mouthMm / 2 + draft.allowance("cutStart");
    SpeedWindow speeds = SpeedWindow.of(choice.window(), mouthMm);
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(way / feed, 0)
        .dwell(draft.allowance("bottomDwell"))
        .on(mouthMm)
        .chip(feed, mouthMm / 2, 1)
        .way(way, draft.allowance("drillApproach"))
        .with(SpecBuilder.alongAxis(load(draft, choice, mouthMm, 0, feed, speeds)));
  }

  /** Enlarging a hole to a flat bottom. */
  public static Cut counterbore(
      RouteDraft draft, ToolChoice choice, double fromDiameterMm, double lengthMm) {
    double diameter = choice.tool().sizeMm();
    double feed = draft.allowance("counterboreFeed") * DrillFeed.mmPerRev(draft, choice, diameter);
    double way = lengthMm + draft.allowance("cutStart");
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameter);
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(way / feed, 0)
        .dwell(draft.allowance("bottomDwell"))
        .on(diameter)
        .chip(feed, (diameter - fromDiameterMm) / 2, 1)
        .way(way, draft.allowance("drillApproach"))
        .with(SpecBuilder.alongAxis(load(draft, choice, diameter, fromDiameterMm, feed, speeds)));
  }

  /** Reaming a drilled or bored hole; out again at feed where the grade is finer than 8. */
  public static Cut ream(RouteDraft draft, ToolChoice choice, double lengthMm, int itGrade) {
    double diameter = choice.tool().sizeMm();
    double wanted = draft.allowance("reamFeed") * diameter;
    double feed = Math.max(choice.window().feedLow(), Math.min(choice.window().feedHigh(), wanted));
    double lead = draft.allowance("reamLead");
    ReamPass.Out out = itGrade < 8 ? ReamPass.Out.AT_FEED : ReamPass.Out.AT_RAPID;
    ReamPass pass =
        new ReamPass(
            lengthMm, lead, draft.allowance("cutStart"), draft.allowance("cutOverrun"), feed, out);
    double from = diameter - 2 * draft.allowance("reamStock");
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameter);
    int teeth = Math.max(2, choice.tool().family().teethCount());
    CuttingLoad load =
        new HoleCut(diameter, from, teeth, 45, feed, HoleCut.Thrust.THINNED_POINT)
            .load(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(ChipCompression.DRILLING),
                speeds.highestRevPerMin());
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(pass.revolutionsCount(), 0)
        .on(diameter)
        .chip(feed, draft.allowance("reamStock"), 1)
        .way(lengthMm + lead, draft.allowance("drillApproach"))
        .with(SpecBuilder.alongAxis(load));
  }

  /**
   * Holes made one after another by a driven drill, with the spindle held.
   *
   * @param lengthMm drilled length of each hole
   * @param depthTo whether the point comes out
   * @param holeCount holes
   * @param lie how they lie to the axis
   */
  public static Cut driven(
      RouteDraft draft,
      ToolChoice choice,
      double lengthMm,
      DepthTo depthTo,
      int holeCount,
      Lie lie) {
    double diameter = choice.tool().sizeMm();
    double feed = DrillFeed.mmPerRev(draft, choice, diameter);
    DrillPass pass =
        DrillPass.solid(
            diameter, pointAngle(choice), lengthMm, depthTo, draft.allowance("cutStart"), feed);
    double revPerMin = DrivenTool.revPerMin(draft, choice, diameter);
    double between = (holeCount - 1) * draft.allowance("holdIndex");
    double out = holeCount * pass.travelMm() * 60 / draft.allowance("drillReturn");
    double fixed = holeCount * pass.timeS(revPerMin) + out + between;
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameter);
    CuttingLoad load = load(draft, choice, diameter, 0, feed, speeds);
    double power = load.torqueNm() * revPerMin / 9549.297;
    return new SpecBuilder(choice)
        .time(0, fixed)
        .driven(revPerMin)
        .on(diameter)
        .chip(feed, diameter / 2, holeCount)
        .way(holeCount * pass.travelMm(), draft.allowance("rapidApproach"))
        .with(
            new Loads(
                load.mainForceN(),
                lie == Lie.ALONG_AXIS ? load.axialForceN() : 0,
                lie == Lie.ALONG_AXIS ? 0 : load.axialForceN(),
                lie == Lie.ALONG_AXIS ? load.torqueNm() : 0,
                power,
                load.axialForceN()));
  }

  static double pointAngle(ToolChoice choice) {
    double angle = choice.tool().family().leadAngleDeg();
    return angle >= 60 ? angle : 118;
  }

  private static CuttingLoad load(
      RouteDraft draft,
      ToolChoice choice,
      double diameter,
      double from,
      double feed,
      SpeedWindow speeds) {
    HoleCut.Thrust thrust =
        choice.window().toolMaterial() == ToolMaterial.HSS
            ? HoleCut.Thrust.CHISEL_POINT
            : HoleCut.Thrust.THINNED_POINT;
    int edges = Math.max(2, choice.tool().family().teethCount());
    return new HoleCut(diameter, from, edges, pointAngle(choice) / 2, feed, thrust)
        .load(
            SpecBuilder.constants(draft.inquiry().material()),
            SpecBuilder.worn(ChipCompression.DRILLING),
            speeds.highestRevPerMin());
  }
}
