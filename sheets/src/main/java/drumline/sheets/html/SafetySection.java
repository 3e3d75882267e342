package drumline.sheets.html;

import static j2html.TagCreator.h2;
import static j2html.TagCreator.section;

import drumline.sheets.content.process.SafetyFigure;
import drumline.sheets.html.SheetTable.Column;
import j2html.tags.DomContent;
import java.util.List;

/** Figures that can hurt someone, each with its caution beside it. */
final class SafetySection {
  private SafetySection() {}

  static DomContent html(List<SafetyFigure> figures) {
    SheetTable table =
        new SheetTable(
            "Figures that can hurt someone, and what to do about them",
            Column.words("Figure"),
            Column.figures("Planned", ""),
            Column.figures("Limit", ""),
            Column.words("Caution"));
    figures.forEach(
        row -> table.row(row.tone(), row.label(), row.figure(), row.limit(), row.kind().caution()));
    return section(h2("Grip, bar and fire"), table.html()).withClass("safety");
  }
}
