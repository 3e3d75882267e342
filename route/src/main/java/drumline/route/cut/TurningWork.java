package drumline.route.cut;

import drumline.cutting.finish.RollerBurnishing;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.turning.TurningCut;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.shop.operation.Loads;

/** Cuts of turning and boring tools along or across the axis. */
public final class TurningWork {
  private TurningWork() {}

  /** Inside or outside of the work. */
  public enum Side {
    /** Outside surface or face. */
    OUTSIDE(ChipCompression.OUTSIDE_TURNING),
    /** Bore wall. */
    INSIDE(ChipCompression.INSIDE_TURNING);

    private final ChipCompression compression;

    Side(ChipCompression compression) {
      this.compression = compression;
    }
  }

  /**
   * Roughing along the axis in as many passes as the window's depth asks for: revolutions = passes
   * · (start + length) / feed.
   *
   * @param stockMm stock on the radius
   * @param lengthMm length of the surface
   * @param diameterMm diameter on which the speed counts
   */
  public static Cut rough(
      RouteDraft draft,
      ToolChoice choice,
      Side side,
      double stockMm,
      double lengthMm,
      double diameterMm) {
    int passes = Math.max(1, (int) Math.ceil(stockMm / choice.window().depthHighMm() - 1e-9));
    double feed = choice.window().feedHigh();
    double way = lengthMm + draft.allowance("cutStart");
    return along(draft, choice, side, feed, stockMm / passes, passes, way, diameterMm);
  }

  /**
   * One finishing pass along a contour, with a feed that meets the roughness.
   *
   * @param lengthMm length of the contour that is followed, edges included
   * @param roughnessRaUm roughness asked
   * @param diameterMm diameter on which the speed counts
   */
  public static Cut finish(
      RouteDraft draft,
      ToolChoice choice,
      Side side,
      double lengthMm,
      double roughnessRaUm,
      double diameterMm) {
    double feed = FinishFeed.feedMmPerRev(draft, choice, roughnessRaUm);
    double stock = draft.allowance(side == Side.OUTSIDE ? "finishTurnStock" : "finishBoreStock");
    double way = lengthMm + draft.allowance("cutStart");
    return along(draft, choice, side, feed, stock, 1, way, diameterMm);
  }

  /**
   * Facing towards the axis at constant speed.
   *
   * @param fromDiameterMm outer diameter, on which the speed counts
   * @param toDiameterMm inner diameter, 0 for solid work
   */
  public static Cut face(
      RouteDraft draft,
      ToolChoice choice,
      double stockMm,
      double fromDiameterMm,
      double toDiameterMm,
      double roughnessRaUm) {
    double feed = FinishFeed.feedMmPerRev(draft, choice, roughnessRaUm);
    double way =
        (fromDiameterMm - toDiameterMm) / 2
            + draft.allowance("cutStart")
            + draft.allowance("cutOverrun");
    SpeedWindow speeds = SpeedWindow.of(choice.window(), fromDiameterMm);
    ChipSection chip = new ChipSection(stockMm, feed, 95);
    var load =
        new TurningCut(fromDiameterMm, chip, ForceSplit.SQUARE_EDGE, TurningCut.Along.RADIUS)
            .load(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(ChipCompression.OUTSIDE_TURNING),
                speeds.highestRevPerMin());
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(way / feed, 0)
        .on(fromDiameterMm)
        .chip(feed, stockMm, 1)
        .way(way, draft.allowance("rapidApproach"))
        .with(SpecBuilder.acrossAxis(load));
  }

  /** Rollers led along a finished surface and back: revolutions = 2 · (start + length) / feed. */
  public static Cut burnish(
      RouteDraft draft, ToolChoice choice, Side side, double lengthMm, double diameterMm) {
    double feed = choice.window().feedHigh();
    double way = lengthMm + draft.allowance("cutStart");
    double force = draft.allowance("burnishForce");
    double drag = draft.allowance("rollDrag") * force;
    String approach = side == Side.OUTSIDE ? "rapidApproach" : "drillApproach";
    return new SpecBuilder(choice)
        .speeds(SpeedWindow.of(choice.window(), diameterMm))
        .time(2 * new RollerBurnishing(way, feed).timeS(60), 0)
        .on(diameterMm)
        .chip(feed, choice.window().depthHighMm(), 2)
        .way(2 * way, draft.allowance(approach))
        .with(new Loads(drag, drag, force, drag * diameterMm / 2000, 0, force));
  }

  private static Cut along(
      RouteDraft draft,
      ToolChoice choice,
      Side side,
      double feed,
      double depth,
      int passes,
      double way,
      double diameterMm) {
    SpeedWindow speeds = SpeedWindow.of(choice.window(), diameterMm);
    ChipSection chip = new ChipSection(depth, feed, leadAngle(choice));
    var load =
        new TurningCut(diameterMm, chip, ForceSplit.SQUARE_EDGE, TurningCut.Along.AXIS)
            .load(
                SpecBuilder.constants(draft.inquiry().material()),
                SpecBuilder.worn(side.compression),
                speeds.highestRevPerMin());
    String approach = side == Side.OUTSIDE ? "rapidApproach" : "drillApproach";
    return new SpecBuilder(choice)
        .speeds(speeds)
        .time(passes * way / feed, (passes - 1) * draft.allowance("returnStroke"))
        .on(diameterMm)
        .chip(feed, depth, passes)
        .way(passes * way, draft.allowance(approach))
        .with(SpecBuilder.alongAxis(load));
  }

  private static double leadAngle(ToolChoice choice) {
    double angle = choice.tool().family().leadAngleDeg();
    return angle > 0 ? angle : 95;
  }
}
