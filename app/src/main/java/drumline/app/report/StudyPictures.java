package drumline.app.report;

import drumline.app.economic.EconomicCycle;
import drumline.app.replan.Shortening;
import drumline.app.setting.ToolSetting;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.DrawingUnits;
import drumline.drawing.cost.CycleCostCurve;
import drumline.drawing.cost.GainBars;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.strip.FilmStrip;
import drumline.drawing.svg.Look;
import drumline.drawing.tooling.DrumFront;
import drumline.drawing.tooling.ToolLayout;
import drumline.drawing.tooling.ToolSheet;
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
    PartSheet sheet = new PartSheet(units(study), look, Set.of());
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

  /** The tool layout, sheet by sheet. */
  public static List<String> tooling(MachineStudy study, PlannedLayout plan, Look look) {
    return ToolLayout.svgs(toolSheet(study, plan, look));
  }

  /** How many sheets the tool layout has. */
  public static int toolingCount(MachineStudy study, PlannedLayout plan) {
    return ToolLayout.sheetCount(toolSheet(study, plan, Look.PAPER));
  }

  /** The drum as the operator sees it. */
  public static String drum(MachineStudy study, PlannedLayout plan, Look look) {
    return DrumFront.svg(toolSheet(study, plan, look));
  }

  private static ToolSheet toolSheet(MachineStudy study, PlannedLayout plan, Look look) {
    return new ToolSheet(
        study.inquiry().part(),
        study.inquiry().bar(),
        study.machine(),
        plan.timeline(),
        plan.states(),
        ToolSetting.of(study, plan),
        units(study),
        look);
  }

  /** Units of an inquiry's drawings: those that its print is written in. */
  private static DrawingUnits units(MachineStudy study) {
    return switch (study.inquiry().units()) {
      case METRIC -> DrawingUnits.METRIC;
      case INCH -> DrawingUnits.INCH;
    };
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
    List<Picture> pictures = new ArrayList<>();
    pictures.add(
        new Picture(
            "The piece",
            study.inquiry().part().name() + ", upper half in section.",
            Picture.Room.COLUMN,
            part(study, Look.SCREEN)));
    pictures.add(
        new Picture(
            "Cycle wall",
            "One column for each position in the order of travel; time runs down from the index.",
            Picture.Room.WHOLE_SHEET,
            wall(study, plan, Look.SCREEN)));
    pictures.add(
        new Picture(
            "The workpiece from bar to piece",
            "The workpiece as it leaves each position.",
            Picture.Room.COLUMN,
            strip(study, plan, Look.SCREEN)));
    List<String> sheets = tooling(study, plan, Look.SCREEN);
    for (int i = 0; i < sheets.size(); i++) {
      String which = sheets.size() == 1 ? "" : ", sheet " + (i + 1) + " of " + sheets.size();
      pictures.add(
          new Picture(
              "Tool layout" + which,
              "Tools at the ends of their cuts; what is removed here is hatched in colour.",
              Picture.Room.WHOLE_SHEET,
              sheets.get(i)));
    }
    pictures.add(
        new Picture(
            "The drum from the front",
            "Positions in the order of travel, with their slides and tools.",
            Picture.Room.COLUMN,
            drum(study, plan, Look.SCREEN)));
    return pictures;
  }
}
