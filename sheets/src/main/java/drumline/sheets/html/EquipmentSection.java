package drumline.sheets.html;

import static j2html.TagCreator.h2;
import static j2html.TagCreator.section;

import drumline.sheets.Figures;
import drumline.sheets.content.money.EquipmentRow;
import drumline.sheets.content.money.ToolRow;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.html.SheetTable.Column;
import j2html.tags.DomContent;
import java.util.List;

/** Tools to buy and equipment to fit. */
final class EquipmentSection {
  private EquipmentSection() {}

  static DomContent tools(List<ToolRow> tools, String currency) {
    SheetTable table =
        new SheetTable(
            "Tools with their edges and changes",
            Column.words("Tool"),
            Column.words("At"),
            Column.words("Operations"),
            Column.figures("Price", currency),
            Column.figures("Edges", ""),
            Column.figures("Changed every", "pieces"),
            Column.words("Change"),
            Column.figures("Edges used", "per 1000"),
            Column.figures("Cost", currency + " per 1000"));
    tools.forEach(
        row ->
            table.row(
                row.tone(),
                row.tool(),
                row.usedAt(),
                row.operations(),
                Figures.number(row.price(), 2),
                String.valueOf(row.edgesCount()),
                Figures.number((double) row.changedEveryCount(), 0),
                row.changePlan(),
                Figures.number(row.edgesPer1000Count(), 2),
                Figures.number(row.costPer1000(), 2)));
    return section(h2("Tool list"), table.html());
  }

  static DomContent equipment(List<EquipmentRow> equipment, String currency) {
    SheetTable table =
        new SheetTable(
            "What the machine must be fitted with",
            Column.words("Place"),
            Column.words("Equipment"),
            Column.words("Needed for"),
            Column.figures("Option price", currency));
    equipment.forEach(
        row ->
            table.row(
                Tone.PLAIN,
                row.place(),
                row.equipment(),
                row.neededFor(),
                row.price().map(price -> Figures.number(price, 0)).orElse("included")));
    return section(h2("Machine and equipment"), table.html());
  }
}
