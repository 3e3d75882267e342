package drumline.sheets.html;

import static j2html.TagCreator.h2;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import drumline.sheets.Figures;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.content.process.OperationRow;
import drumline.sheets.content.process.OrderRow;
import drumline.sheets.content.process.PositionSheet;
import drumline.sheets.html.SheetTable.Column;
import drumline.shop.operation.SpindleCondition;
import j2html.tags.DomContent;
import java.util.List;
import java.util.OptionalDouble;

/** What happens at each position, and what must come before what. */
final class ProcessSection {
  private static final double LEAST_SHOWN_SLACK_S = 0.005;

  private ProcessSection() {}

  static DomContent html(List<PositionSheet> positions) {
    SheetTable table =
        new SheetTable(
            "Operations by position, in the order of their start. Speed is at the cutting diameter; for"
                + " driven tools force, torque and power are the tool's own. Time runs from the"
                + " approach to the end of the retract.",
            Column.words("No."),
            Column.words("Operation and reason"),
            Column.words("Tool"),
            Column.words("Slide"),
            Column.figures("Spindle", "rev/min"),
            Column.figures("Speed", "m/min"),
            Column.figures("Feed", "mm/rev"),
            Column.figures("Time", "s"),
            Column.figures("Force", "N"),
            Column.figures("Torque", "N·m"),
            Column.figures("Power", "kW"),
            Column.figures("Life", "pieces"));
    for (PositionSheet position : positions) {
      table.group(position.tone(), groupHead(position));
      position.operations().forEach(row -> table.row(row.tone(), cells(row)));
    }
    return section(h2("Process sheet"), table.html()).withClass("wide process");
  }

  static DomContent orders(List<OrderRow> orders) {
    SheetTable table =
        new SheetTable(
            "Operations that must be finished before another begins",
            Column.words("First"),
            Column.words("Then"),
            Column.words("Reason"));
    orders.forEach(row -> table.row(Tone.PLAIN, row.before(), row.after(), row.reason()));
    return section(h2("Order of work"), table.html());
  }

  private static DomContent[] groupHead(PositionSheet position) {
    boolean governs = position.tone() == Tone.MARKED;
    String slack =
        governs || position.slackS() < LEAST_SHOWN_SLACK_S
            ? ""
            : ", " + Figures.withUnit(position.slackS(), 2, "s") + " to spare";
    String other = position.other().isEmpty() ? "" : " · " + position.other();
    return new DomContent[] {
      text(position.title()),
      span(Figures.withUnit(position.busyS(), 2, "s") + slack + other).withClass("aside"),
      governs ? span("governs the cycle").withClass("flag") : text("")
    };
  }

  private static List<DomContent> cells(OperationRow row) {
    DomContent title =
        span(text(row.title()), span(row.reason()).withClass("reason")).withClass("what");
    return List.of(
        text(row.id()),
        title,
        text(row.tool()),
        text(row.slide()),
        text(spindle(row)),
        text(figure(row.cuttingSpeedMPerMin(), 0)),
        text(figure(row.feedMmPerRev(), 3)),
        text(Figures.number(row.timeS(), 2)),
        text(figure(row.cuttingForceN(), 0)),
        text(figure(row.torqueNm(), 2)),
        text(figure(row.powerKw(), 2)),
        text(Figures.number((double) row.lifePiecesCount(), 0)));
  }

  /**
   * Nothing where there is nothing to say: a held spindle has no speed, a rolled thread no feed.
   */
  private static String figure(double valueRatio, int decimals) {
    return valueRatio == 0 ? "–" : Figures.number(valueRatio, decimals);
  }

  private static String spindle(OperationRow row) {
    String work =
        switch (row.condition()) {
          case TURNING, TURNING_ANY -> Figures.number(row.spindleRevPerMin(), 0);
          case HELD -> "held";
          case C_AXIS -> "C axis";
        };
    OptionalDouble tool = row.toolRevPerMin();
    boolean turning = row.condition() == SpindleCondition.TURNING;
    return tool.isEmpty() || turning
        ? work
        : work + ", tool " + Figures.number(tool.getAsDouble(), 0);
  }
}
