package drumline.sheets.html;

import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import drumline.economics.bar.BarYield;
import drumline.economics.cost.CostShare;
import drumline.economics.output.Output;
import drumline.economics.output.TimeShare;
import drumline.economics.study.Sensitivity;
import drumline.sheets.Figures;
import drumline.sheets.content.money.MoneyContent;
import drumline.sheets.content.plain.Tone;
import drumline.sheets.html.SheetTable.Column;
import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Output and cost. */
final class MoneySection {
  private static final int MONEY_DECIMALS = 4;
  private static final int SHOWN_EFFECTS = 8;
  private static final double LEAST_SHOWN_S = 0.0005;

  private MoneySection() {}

  static DomContent html(MoneyContent money) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(h2("Output and cost"));
    parts.add(
        pair(
            part("Where the time goes", times(money.output())),
            part("What a piece costs", cost(money))));
    money.costBar().ifPresent(bar -> parts.add(PictureSection.plain(bar)));
    parts.add(
        pair(
            part("Output and material", output(money)),
            part("Which assumption matters most", sensitivity(money))));
    if (!money.decision().isEmpty()) {
      parts.add(part("Decision", decision(money)));
    }
    return section(each(parts, part -> part)).withClass("money");
  }

  private static DomContent pair(DomContent left, DomContent right) {
    return div(left, right).withClass("pair");
  }

  private static DomContent part(String heading, DomContent content) {
    return div(h3(heading), content).withClass("keep");
  }

  private static DomContent times(Output output) {
    SheetTable table =
        new SheetTable(
            "Seconds of one good piece",
            Column.words("Spent on"),
            Column.figures("Time", "s"),
            Column.figures("Share", "%"));
    double wholeS = 3600 / output.netPerHour();
    for (TimeShare share : output.times()) {
      if (share.perGoodPieceS() >= LEAST_SHOWN_S) {
        table.row(
            Tone.PLAIN,
            share.reason(),
            Figures.number(share.perGoodPieceS(), 3),
            Figures.number(100 * share.perGoodPieceS() / wholeS, 1));
      }
    }
    table.row(Tone.MARKED, "one good piece", Figures.number(wholeS, 3), Figures.number(100.0, 1));
    return table.html();
  }

  private static DomContent output(MoneyContent money) {
    Output output = money.output();
    BarYield bar = money.bar();
    SheetTable table =
        new SheetTable(
            "Pieces, hours and bar",
            Column.words("What"),
            Column.figures("Figure", ""),
            Column.words("Unit"));
    table.row(Tone.PLAIN, "gross output", n(output.grossPerHour(), 0), "pieces/h");
    table.row(Tone.PLAIN, "net output", n(output.netPerHour(), 0), "good pieces/h");
    table.row(Tone.PLAIN, "net over gross", n(output.efficiencyPct(), 1), "%");
    table.row(Tone.PLAIN, "hours needed", n(output.neededHPerYear(), 0), "h/year, set-up included");
    table.row(Tone.PLAIN, "of which set-up", n(output.setUpHPerYear(), 0), "h/year");
    table.row(Tone.PLAIN, "machines", String.valueOf(output.machinesCount()), load(output));
    table.row(Tone.PLAIN, "pieces of a bar", String.valueOf(bar.piecesPerLoadCount()), barOf(bar));
    table.row(Tone.PLAIN, "bar yield", n(bar.yieldPct(), 1), "% of its length");
    table.row(Tone.PLAIN, "bar bought", n(1000 * bar.boughtKgPerPiece(), 1), "g/piece");
    table.row(Tone.PLAIN, "finished piece", n(1000 * bar.partKgPerPiece(), 1), "g/piece");
    table.row(Tone.PLAIN, "chips and ends", n(1000 * bar.scrapKgPerPiece(), 1), "g/piece");
    return table.html();
  }

  private static String load(Output output) {
    return "loaded to " + n(output.loadPct(), 0) + " %";
  }

  private static String barOf(BarYield bar) {
    return "from " + n(bar.loadedLengthMm(), 0) + " mm";
  }

  private static DomContent cost(MoneyContent money) {
    SheetTable table =
        new SheetTable(
            "Cost of one good piece",
            Column.words("Share"),
            Column.figures("Amount", money.cost().currency()),
            Column.figures("Part", "%"),
            Column.words(""));
    BigDecimal total = money.cost().total();
    for (CostShare share : money.cost().shares()) {
      double part = 100 * share.amount().doubleValue() / total.doubleValue();
      table.row(
          Tone.PLAIN,
          List.of(
              text(share.kind().words()),
              text(Figures.number(share.amount(), MONEY_DECIMALS)),
              text(n(part, 1)),
              span(span("").withClass("fill").withStyle(width(part))).withClass("bar")));
    }
    table.row(
        Tone.MARKED,
        "one good piece",
        Figures.number(total, MONEY_DECIMALS),
        Figures.number(100.0, 1),
        "");
    return table.html();
  }

  private static String width(double partPct) {
    return "width:" + String.format(Locale.ROOT, "%.1f", Math.max(0, partPct)) + "%";
  }

  private static DomContent decision(MoneyContent money) {
    SheetTable table =
        new SheetTable(
            "Against today, and what it takes",
            Column.words("What"),
            Column.words("Figure"),
            Column.words("Behind it"));
    money.decision().forEach(l -> table.row(Tone.PLAIN, l.label(), l.value(), l.note()));
    return table.html();
  }

  private static DomContent sensitivity(MoneyContent money) {
    String change = n(money.sensitivity().changePct(), 0) + " %";
    String currency = money.cost().currency();
    SheetTable table =
        new SheetTable(
            "Piece cost when one assumption alone is " + change + " off",
            Column.words("Assumption"),
            Column.figures(change + " less", currency),
            Column.figures(change + " more", currency),
            Column.figures("Swing", currency));
    for (Sensitivity.Effect effect :
        money.sensitivity().effects().stream().limit(SHOWN_EFFECTS).toList()) {
      table.row(
          Tone.PLAIN,
          effect.assumed().words(),
          Figures.number(effect.costWhenLess(), MONEY_DECIMALS),
          Figures.number(effect.costWhenMore(), MONEY_DECIMALS),
          Figures.number(effect.swing(), MONEY_DECIMALS));
    }
    return table.html();
  }

  private static String n(double valueRatio, int decimals) {
    return Figures.number(valueRatio, decimals);
  }
}
