package drumline.app.report;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.DrawingUnits;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.strip.FilmStrip;
import drumline.drawing.svg.Look;
import drumline.drawing.wall.CycleWall;
import drumline.drawing.wall.WallView;
import drumline.sheets.content.plain.Picture;
import java.util.List;
import java.util.Set;

/** Drawings of a study. */
public final class StudyPictures {
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

  static List<Picture> pictures(MachineStudy study, PlannedLayout plan) {
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
