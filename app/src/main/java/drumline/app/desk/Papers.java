package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.sheet.PaperAnswer;
import drumline.app.answer.sheet.PaperAnswer.Sheet;
import drumline.app.json.PlanJson;
import drumline.app.report.StudyPictures;
import drumline.app.report.StudyReport;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.Shelves;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.drawing.svg.Look;
import drumline.sheets.html.StudyHtml;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The sheets that are handed over. */
public final class Papers {
  private final Shelves shelves;
  private final LayoutCases cases;

  Papers(Shelves shelves, LayoutCases cases) {
    this.shelves = shelves;
    this.cases = cases;
  }

  /** A file to hand over. */
  public record PaperFile(String name, String mediaType, String text) {}

  private enum Kind {
    STUDY("study.html", "Study", "text/html", "The study on one page, to read and to print."),
    PLAN("plan.json", "Plan as data", "application/json", "The plan for other programs."),
    PIECE("piece.svg", "Print", "image/svg+xml", "The piece, half in section."),
    WALL("cycle-wall.svg", "Cycle wall", "image/svg+xml", "Positions and slides over time."),
    STRIP("workpiece.svg", "Workpiece", "image/svg+xml", "The workpiece after each position."),
    COST("piece-cost.svg", "Piece cost", "image/svg+xml", "What the piece costs, share by share."),
    PDF("study.pdf", "Study as PDF", "application/pdf", "Not there yet: print the study page."),
    XLSX(
        "study.xlsx",
        "Tables as XLSX",
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        "Not there yet.");

    private final String file;
    private final String title;
    private final String mediaType;
    private final String words;

    Kind(String file, String title, String mediaType, String words) {
      this.file = file;
      this.title = title;
      this.mediaType = mediaType;
      this.words = words;
    }

    private boolean isMissing() {
      return this == PDF || this == XLSX;
    }
  }

  /**
   * What can be had.
   *
   * @param folder address below which the sheets are found
   */
  public PaperAnswer list(String id, String folder) {
    Shelves.State state = shelves.state(id);
    boolean isPlanned = study(state).isPresent();
    List<Sheet> sheets =
        Arrays.stream(Kind.values()).map(kind -> sheet(kind, isPlanned, folder)).toList();
    return new PaperAnswer(
        state.revision(),
        isPlanned ? folder + Kind.STUDY.file : null,
        sheets,
        state.read().places().of(state.read().opened().problems()));
  }

  private static Sheet sheet(Kind kind, boolean isPlanned, String folder) {
    String state = kind.isMissing() ? "missing" : isPlanned ? "ready" : "unplanned";
    String href = state.equals("ready") ? folder + kind.file : null;
    return new Sheet(kind.file, kind.title, kind.mediaType, state, href, kind.words);
  }

  private Optional<MachineStudy> study(Shelves.State state) {
    return cases.present(state).flatMap(one -> one.study(cases.lay(state, one)));
  }

  /** One sheet. */
  public PaperFile file(String id, String name, LocalDate date) {
    Shelves.State state = shelves.state(id);
    Kind kind =
        Arrays.stream(Kind.values())
            .filter(one -> one.file.equals(name))
            .findFirst()
            .orElseThrow(
                () -> DeskRefusal.of(DeskRefusal.Kind.MISSING, "There is no sheet " + name + "."));
    if (kind.isMissing()) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.NOT_YET, kind.title + " cannot be made yet: print the study page.");
    }
    MachineStudy study =
        study(state)
            .orElseThrow(() -> DeskRefusal.of(DeskRefusal.Kind.REFUSED, "Nothing is planned yet."));
    String text = text(kind, state, study, date);
    return new PaperFile(name, kind.mediaType, text);
  }

  private String text(Kind kind, Shelves.State state, MachineStudy study, LocalDate date) {
    PlannedLayout plan = study.plan().orElseThrow();
    return switch (kind) {
      case STUDY ->
          StudyHtml.render(
              StudyReport.content(
                  study,
                  new OtherStudies(shelves, cases).of(state, study),
                  List.of(),
                  state.read().findInquiry().isPresent()
                      ? state.read().triage()
                      : drumline.economics.triage.Triage.of(study.inquiry(), null),
                  state.read().opened().changes(),
                  date,
                  List.of()));
      case PLAN -> PlanJson.text(study);
      case PIECE -> StudyPictures.part(study, Look.PAPER);
      case WALL -> StudyPictures.wall(study, plan, Look.PAPER);
      case STRIP -> StudyPictures.strip(study, plan, Look.PAPER);
      case COST -> StudyPictures.cost(study, plan, Look.PAPER);
      case PDF, XLSX -> throw new IllegalStateException(kind + " has no text");
    };
  }
}
