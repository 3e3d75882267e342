package drumline.app.ask;

import drumline.app.json.PlanJson;
import drumline.app.report.StudyPictures;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.svg.Look;
import drumline.sheets.content.StudyContent;
import drumline.sheets.html.StudyHtml;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The files of a study in a folder. */
public final class StudyFiles {
  /** The plan as data. */
  public static final String PLAN = "plan.json";

  /** The study to read and print. */
  public static final String STUDY = "study.html";

  /** The piece in space. */
  public static final String PIECE = "part.glb";

  private StudyFiles() {}

  /**
   * Paths of a planned study's files in a folder, as a reader would type them, in the order they
   * are named.
   *
   * @throws IllegalArgumentException if the study has no layout
   */
  public static List<String> paths(Path folder, MachineStudy study) {
    PlannedLayout plan =
        study
            .plan()
            .orElseThrow(
                () -> new IllegalArgumentException("study: no layout, allowed: a planned study"));
    List<String> names =
        new ArrayList<>(
            List.of(STUDY, PLAN, "piece.svg", "cycle-wall.svg", "workpiece.svg", "drum.svg"));
    for (int i = 1; i <= StudyPictures.toolingCount(study, plan); i++) {
      names.add(tooling(i));
    }
    names.add("piece-cost.svg");
    names.add(PIECE);
    return names.stream().map(name -> folder.resolve(name).toString()).toList();
  }

  private static String tooling(int sheet) {
    return "tool-layout-" + sheet + ".svg";
  }

  /**
   * Writes all files of a planned study; of one without a layout only the plan.
   *
   * @param content what the sheets say
   * @throws IOException if the folder cannot be made or a file not written
   */
  public static void write(Path folder, MachineStudy study, StudyContent content)
      throws IOException {
    writePlan(folder, study);
    text(folder, STUDY, StudyHtml.render(content));
    text(folder, "piece.svg", StudyPictures.part(study, Look.PAPER));
    piece(folder, study);
    if (study.plan().isPresent()) {
      PlannedLayout plan = study.plan().orElseThrow();
      text(folder, "cycle-wall.svg", StudyPictures.wall(study, plan, Look.PAPER));
      text(folder, "workpiece.svg", StudyPictures.strip(study, plan, Look.PAPER));
      text(folder, "drum.svg", StudyPictures.drum(study, plan, Look.PAPER));
      List<String> sheets = StudyPictures.tooling(study, plan, Look.PAPER);
      for (int i = 0; i < sheets.size(); i++) {
        text(folder, tooling(i + 1), sheets.get(i));
      }
      text(folder, "piece-cost.svg", StudyPictures.cost(study, plan, Look.PAPER));
    }
  }

  /**
   * Writes the plan alone.
   *
   * @throws IOException if the folder cannot be made or the file not written
   */
  public static void writePlan(Path folder, MachineStudy study) throws IOException {
    Files.createDirectories(folder);
    text(folder, PLAN, PlanJson.text(study));
  }

  /** The piece in space, or a text that says why there is none. */
  private static void piece(Path folder, MachineStudy study) throws IOException {
    PieceInSpace piece = PieceInSpace.of(study.inquiry().part(), study.inquiry().bar());
    if (piece.glb().isPresent()) {
      Files.write(folder.resolve(PIECE), piece.glb().orElseThrow());
    }
    for (Problem problem : piece.problems()) {
      text(folder, PIECE + ".txt", problem.toLine() + "\n");
    }
  }

  private static void text(Path folder, String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }
}
