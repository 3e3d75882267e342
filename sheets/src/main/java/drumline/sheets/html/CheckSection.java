package drumline.sheets.html;

import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import drumline.sheets.content.AssumptionRow;
import drumline.sheets.content.AuditRow;
import drumline.sheets.content.money.ComparisonTable;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.html.SheetTable.Align;
import drumline.sheets.html.SheetTable.Column;
import drumline.shop.problem.Problem;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/** What was compared, checked, found and assumed. */
final class CheckSection {
  private CheckSection() {}

  static DomContent notices(List<Problem> problems) {
    return section(h2("What a person must look at"), ul(each(problems, CheckSection::notice)))
        .withClass("notices");
  }

  private static DomContent notice(Problem problem) {
    boolean error = problem.severity() == Problem.Severity.ERROR;
    return li(
            strong(error ? "Error" : "Warning"),
            text(" " + problem.where() + ": " + problem.found() + ". "),
            span("Allowed: " + problem.allowed() + ". " + problem.hint()).withClass("soft"))
        .withClass(error ? "marked" : "");
  }

  static DomContent audit(List<AuditRow> rows) {
    SheetTable table =
        new SheetTable(
            "Checks of the finished layout, by code that shares nothing with the planner",
            Column.words("Check"),
            Column.figures("Found", ""),
            Column.figures("Allowed", ""),
            Column.words("Outcome"));
    for (AuditRow row : rows) {
      Tone tone = row.outcome() == AuditRow.Outcome.BROKEN ? Tone.MARKED : Tone.PLAIN;
      table.row(tone, row.check(), row.figure(), row.limit(), row.outcome().words());
    }
    return section(h2("Audit"), table.html()).withClass("checks");
  }

  static DomContent alternatives(ComparisonTable comparison) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(""));
    for (ComparisonTable.Column way : comparison.columns()) {
      String mark = way.tone() == Tone.MARKED ? "proposed" : "";
      columns.add(new Column(way.title(), mark, Align.FIGURES));
    }
    SheetTable table =
        new SheetTable("The same piece made in other ways", columns.toArray(Column[]::new));
    for (int line = 0; line < comparison.lines().size(); line++) {
      List<DomContent> cells = new ArrayList<>();
      cells.add(text(comparison.lines().get(line)));
      for (ComparisonTable.Column way : comparison.columns()) {
        String value = way.values().get(line);
        cells.add(way.tone() == Tone.MARKED ? strong(value) : text(value));
      }
      table.row(Tone.PLAIN, cells);
    }
    return section(h2("Alternatives side by side"), table.html());
  }

  static DomContent assumptions(List<AssumptionRow> rows) {
    SheetTable table =
        new SheetTable(
            "What the figures rest on",
            Column.words("Assumption"),
            Column.words("Value"),
            Column.words("Source"));
    rows.forEach(row -> table.row(Tone.PLAIN, row.text(), row.value(), row.source()));
    return section(h2("Assumptions"), table.html());
  }
}
