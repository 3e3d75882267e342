package drumline.app.report;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.DrawingUnits;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.strip.FilmStrip;
import drumline.drawing.wall.CycleWall;
import drumline.sheets.content.Picture;
import java.util.List;

/** Drawings of a study. */
public final class StudyPictures {
  private StudyPictures() {}

  /** The piece, half in section. */
  public static String part(MachineStudy study) {
    return PartDrawing.svg(study.inquiry().part(), study.inquiry().bar(), DrawingUnits.METRIC);
  }

  /** The cycle wall. */
  public static String wall(MachineStudy study, PlannedLayout plan) {
    return CycleWall.svg(
        plan.timeline(), study.route(), study.machine(), plan.states().positions());
  }

  /** The workpiece after each position. */
  public static String strip(MachineStudy study, PlannedLayout plan) {
    return FilmStrip.svg(study.inquiry().part().name(), plan.states());
  }

  /** What the piece costs, share by share. */
  public static String cost(MachineStudy study, PlannedLayout plan) {
    return MoneyRows.costSvg(study, plan.money());
  }

  static List<Picture> pictures(MachineStudy study, PlannedLayout plan) {
    return List.of(
        new Picture(
            "The piece",
            study.inquiry().part().name() + ", upper half in section.",
            Picture.Room.COLUMN,
            part(study)),
        new Picture(
            "Cycle wall",
            "One column for each position in the order of travel; time runs down from the index.",
            Picture.Room.WHOLE_SHEET,
            wall(study, plan)),
        new Picture(
            "The workpiece from bar to piece",
            "The workpiece as it leaves each position.",
            Picture.Room.COLUMN,
            strip(study, plan)));
  }
}
