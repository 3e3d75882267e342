package drumline.app.report;

import drumline.app.economic.EconomicCycle;
import drumline.app.replan.Shortening;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.DrawingUnits;
import drumline.drawing.cost.CycleCostCurve;
import drumline.drawing.cost.GainBars;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.strip.FilmStrip;
import drumline.drawing.svg.Look;
import drumline.drawing.wall.CycleWall;
import drumline.drawing.wall.WallView;
import drumline.sheets.content.plain.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Drawings of a study. */
public final class StudyPictures {
  private static final int MOST_GAINS = 8;

  private StudyPictures() {}

  /** The piece, half in section. */
  public static String part(MachineStudy study, Look look) {
    PartSheet sheet = new PartSheet(DrawingUnits.METRIC, look, Set.of());
    return PartDrawing.svg(study.inquiry().part(), study.inquiry().bar(), sheet);
  }

  /** The cycle wall. */
  public static String wall(MachineStudy study, PlannedLayout plan, Look look) {
    WallView view = look == Look.PAPER ? WallView.paper() : WallView.screen();
    return CycleWall.svg(
        plan.timeline(), study.route(), study.machine(), plan.states().positions(), view);
  }

  /** The workpiece after each position. */
  public static String strip(MachineStudy study, PlannedLayout plan, Look look) {
    return FilmStrip.svg(study.inquiry().part().name(), plan.states(), look);
  }

  /** What the piece costs, share by share. */
  public static String cost(MachineStudy study, PlannedLayout plan, Look look) {
    return MoneyRows.costSvg(study, plan.money(), look);
  }

  /** Cost of a piece against the cycle. */
  public static String economic(EconomicCycle economic, Look look) {
    return CycleCostCurve.svg(
        economic.points().stream()
            .map(
                point ->
                    new CycleCostCurve.Point(
                        point.cycleS(), point.money().cost().total().doubleValue()))
            .toList(),
        economic.points().get(0).money().cost().currency(),
        look);
  }

  private static Picture gains(List<Shortening> shortenings) {
    return new Picture(
        "What would shorten the cycle",
        "Each change alone, planned again; seconds off the cycle.",
        Picture.Room.COLUMN,
        GainBars.svg(
            shortenings.stream()
                .limit(MOST_GAINS)
                .map(one -> new GainBars.Gain(one.words(), one.gainS()))
                .toList(),
            Look.SCREEN));
  }

  static List<Picture> pictures(
      MachineStudy study,
      PlannedLayout plan,
      EconomicCycle economic,
      List<Shortening> shortenings) {
    List<Picture> pictures = new ArrayList<>(pictures(study, plan));
    pictures.add(
        new Picture(
            "Cost against cycle",
            "What a good piece costs as the tools are slowed to longer cycles; the cheapest marked.",
            Picture.Room.COLUMN,
            economic(economic, Look.SCREEN)));
    if (!shortenings.isEmpty()) {
      pictures.add(gains(shortenings));
    }
    return pictures;
  }

  private static List<Picture> pictures(MachineStudy study, PlannedLayout plan) {
    return List.of(
        new Picture(
            "The piece",
            study.inquiry().part().name() + ", upper half in section.",
            Picture.Room.COLUMN,
            part(study, Look.SCREEN)),
        new Picture(
            "Cycle wall",
            "One column for each position in the order of travel; time runs down from the index.",
            Picture.Room.WHOLE_SHEET,
            wall(study, plan, Look.SCREEN)),
        new Picture(
            "The workpiece from bar to piece",
            "The workpiece as it leaves each position.",
            Picture.Room.COLUMN,
            strip(study, plan, Look.SCREEN)));
  }
}
