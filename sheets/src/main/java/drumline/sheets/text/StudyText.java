package drumline.sheets.text;

import drumline.economics.cost.CostShare;
import drumline.economics.cost.PieceCost;
import drumline.sheets.Figures;
import drumline.sheets.content.AuditRow;
import drumline.sheets.content.Cautions;
import drumline.sheets.content.KeyFigure;
import drumline.sheets.content.StudyContent;
import drumline.sheets.content.StudyHead;
import drumline.sheets.content.money.MoneyLine;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.content.process.OperationRow;
import drumline.sheets.content.process.PositionSheet;
import drumline.sheets.content.process.SafetyFigure;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a study on one terminal screen. */
public final class StudyText {
  /** Narrowest screen that still says something. */
  public static final int LEAST_WIDTH = 60;

  private static final int LABEL_WIDTH = 20;
  private static final int BAR_WIDTH = 12;
  private static final int SHOWN_NOTICES = 4;

  private StudyText() {}

  /**
   * The screen; each line ends with a line feed.
   *
   * @param study what to write
   * @param widthCount characters of a line
   * @throws IllegalArgumentException if the screen is narrower than {@link #LEAST_WIDTH}
   */
  public static String screen(StudyContent study, int widthCount) {
    if (widthCount < LEAST_WIDTH) {
      throw new IllegalArgumentException(
          "widthCount: " + widthCount + ", allowed: at least " + LEAST_WIDTH);
    }
    Lines lines = new Lines(widthCount);
    head(lines, study.head());
    study.keyFigures().forEach(figure -> key(lines, figure));
    positions(lines, study.process());
    money(lines, study);
    safety(lines, study.safety());
    checks(lines, study);
    if (!study.files().isEmpty()) {
      lines.blank().wrapped("  ", "written: " + String.join(", ", study.files()), 4);
    }
    lines.blank().wrapped("Caution. " + Cautions.GENERAL, 0);
    return lines.text().replace(Figures.THIN_SPACE, ' ').replace(Figures.NO_BREAK_SPACE, ' ');
  }

  private static void head(Lines lines, StudyHead head) {
    lines.line(head.title() + "  " + head.number(), head.verdict().words());
    lines.line(head.customer() + ", " + head.material(), head.date().toString());
    lines.line(head.machine());
    lines.blank().wrapped(head.summary(), 0).blank();
  }

  private static void key(Lines lines, KeyFigure figure) {
    String mark = figure.tone() == Tone.MARKED ? ">" : " ";
    String value = figure.value() + " " + figure.unit();
    String head =
        mark
            + " "
            + Lines.padded(figure.label(), LABEL_WIDTH)
            + Lines.padded(value.strip(), LABEL_WIDTH);
    lines.wrapped(head, figure.note(), head.length());
  }

  private static void positions(Lines lines, List<PositionSheet> positions) {
    double longestS = positions.stream().mapToDouble(PositionSheet::busyS).max().orElse(0);
    lines.blank();
    for (PositionSheet position : positions) {
      int filled = (int) Math.round(BAR_WIDTH * position.busyS() / longestS);
      String operations =
          position.operations().stream().map(OperationRow::title).collect(Collectors.joining("; "));
      lines.line(
          (position.tone() == Tone.MARKED ? "> " : "  ")
              + Lines.padded(position.title(), 17)
              + String.format("%7s s ", Figures.number(position.busyS(), 2))
              + "=".repeat(filled)
              + ".".repeat(BAR_WIDTH - filled)
              + "  "
              + operations);
    }
  }

  private static void money(Lines lines, StudyContent study) {
    PieceCost cost = study.money().cost();
    String shares =
        cost.shares().stream()
            .filter(share -> share.amount().signum() != 0)
            .map(StudyText::share)
            .collect(Collectors.joining(" + "));
    lines.blank();
    lines.wrapped(
        "  ",
        "piece cost " + Figures.number(cost.total(), 4) + " " + cost.currency() + " = " + shares,
        4);
    for (MoneyLine line : study.money().decision()) {
      lines.wrapped("  " + Lines.padded(line.label(), LABEL_WIDTH), line.value(), 2 + LABEL_WIDTH);
    }
  }

  private static String share(CostShare share) {
    return share.kind().words().replaceFirst(",.*", "") + " " + Figures.number(share.amount(), 4);
  }

  private static void safety(Lines lines, List<SafetyFigure> figures) {
    if (!figures.isEmpty()) {
      lines.blank();
    }
    for (SafetyFigure row : figures) {
      String mark = row.tone() == Tone.MARKED ? "> " : "  ";
      lines.wrapped(
          mark,
          row.label()
              + ": "
              + row.figure()
              + (row.limit().isEmpty() ? "" : " (" + row.limit() + ")")
              + ". "
              + firstSentence(row.kind().caution()),
          4);
    }
  }

  private static String firstSentence(String caution) {
    return caution.substring(0, caution.indexOf(". ") + 1);
  }

  private static void checks(Lines lines, StudyContent study) {
    lines.blank();
    List<AuditRow> broken =
        study.audit().stream().filter(r -> r.outcome() == AuditRow.Outcome.BROKEN).toList();
    int checks = study.audit().size();
    lines.line("  audit: " + (checks - broken.size()) + " of " + checks + " checks kept");
    broken.forEach(
        row ->
            lines.line(
                "> broken: " + row.check() + ", " + row.figure() + ", allowed " + row.limit()));
    study.notices().stream()
        .limit(SHOWN_NOTICES)
        .map(Problem::toLine)
        .forEach(line -> lines.wrapped("  ", line, 4));
    int more = study.notices().size() - SHOWN_NOTICES;
    if (more > 0) {
      lines.line("  and " + more + " more in the study");
    }
  }
}
