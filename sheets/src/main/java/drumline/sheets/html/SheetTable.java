package drumline.sheets.html;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import drumline.sheets.content.plain.Tone;
import j2html.tags.DomContent;
import j2html.tags.specialized.TbodyTag;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table with its caption, heads that repeat on every page, and a name at the head of each row.
 */
final class SheetTable {
  private static final String NUMBER_CLASS = "n";

  /** Rows up to which a table is kept on one sheet. */
  private static final int SHORT_ROWS = 14;

  private final String title;
  private final List<Column> columns;
  private final List<TbodyTag> groups = new ArrayList<>();
  private TbodyTag group = tbody();
  private int rowCount;

  /** How a column stands. */
  enum Align {
    /** Words, left. */
    WORDS,
    /** Figures, right. */
    FIGURES
  }

  /**
   * A column.
   *
   * @param title its head
   * @param unit unit of its figures, or empty
   * @param align how it stands
   */
  record Column(String title, String unit, Align align) {
    static Column words(String title) {
      return new Column(title, "", Align.WORDS);
    }

    static Column figures(String title, String unit) {
      return new Column(title, unit, Align.FIGURES);
    }
  }

  SheetTable(String title, Column... columns) {
    this.title = title;
    this.columns = List.of(columns);
    groups.add(group);
  }

  /** Begins a group of rows under a head of its own. */
  SheetTable group(Tone tone, DomContent... head) {
    group = tbody().withClass("group" + marked(tone));
    group.with(
        tr(th(head).attr("scope", "rowgroup").attr("colspan", String.valueOf(columns.size()))));
    groups.add(group);
    return this;
  }

  SheetTable row(Tone tone, String... cells) {
    return row(tone, Arrays.stream(cells).map(cell -> (DomContent) text(cell)).toList());
  }

  SheetTable row(Tone tone, List<DomContent> cells) {
    TrTag line = tr().withClass("line" + marked(tone));
    for (int i = 0; i < cells.size(); i++) {
      String kind = columns.get(i).align() == Align.FIGURES ? NUMBER_CLASS : "w";
      line.with(
          i == 0
              ? th(cells.get(i)).attr("scope", "row").withClass(kind)
              : td(cells.get(i)).withClass(kind));
    }
    group.with(line);
    rowCount++;
    return this;
  }

  DomContent html() {
    List<TbodyTag> filled = groups.stream().filter(g -> g.getNumChildren() > 0).toList();
    return div(table(
            caption(title), thead(tr(each(columns, SheetTable::head))), each(filled, g -> g)))
        .withClass(rowCount <= SHORT_ROWS ? "table short" : "table");
  }

  private static DomContent head(Column column) {
    return th(
            text(column.title()),
            column.unit().isEmpty() ? text("") : span(column.unit()).withClass("unit"))
        .attr("scope", "col")
        .withClass(column.align() == Align.FIGURES ? NUMBER_CLASS : "w");
  }

  private static String marked(Tone tone) {
    return tone == Tone.MARKED ? " marked" : "";
  }
}
