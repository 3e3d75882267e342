package drumline.app.report;

import static drumline.sheets.Figures.number;

import drumline.app.study.MachineStudy;
import drumline.app.study.MoneyAgainstToday;
import drumline.app.study.PlannedLayout;
import drumline.drawing.cost.CostBars;
import drumline.drawing.cost.Share;
import drumline.drawing.svg.Look;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.Sensitivity;
import drumline.sheets.content.money.MoneyContent;
import drumline.sheets.content.money.MoneyLine;
import drumline.sheets.content.plain.Picture;
import drumline.shop.inquiry.Today;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Output and cost of a study. */
final class MoneyRows {
  private static final double CHANGE_PCT = 10;

  private MoneyRows() {}

  static MoneyContent money(MachineStudy study, PlannedLayout plan) {
    MoneyStudy money = plan.money();
    return new MoneyContent(
        money.bar(),
        money.output(),
        money.cost(),
        Optional.of(costBar(study, money)),
        decision(study, money),
        Sensitivity.of(money.given(), CHANGE_PCT));
  }

  /** The cost bar alone, for its own file. */
  static String costSvg(MachineStudy study, MoneyStudy money, Look look) {
    List<Share> shares =
        money.cost().shares().stream().map(s -> new Share(s.kind().words(), s.amount())).toList();
    return CostBars.svg(shares, money.cost().currency(), today(study), look);
  }

  private static Picture costBar(MachineStudy study, MoneyStudy money) {
    return new Picture(
        "Piece cost by share",
        "What a good piece costs, share by share, and what it costs today.",
        Picture.Room.COLUMN,
        costSvg(study, money, Look.SCREEN));
  }

  private static @Nullable BigDecimal today(MachineStudy study) {
    Today today = study.inquiry().today();
    return today == null
        ? null
        : study.inquiry().rates().convert(today.costPerPiece(), today.currency());
  }

  private static List<MoneyLine> decision(MachineStudy study, MoneyStudy money) {
    String currency = money.cost().currency();
    List<MoneyLine> lines = new ArrayList<>();
    lines.add(
        new MoneyLine(
            "Investment",
            number(money.investment(), 0) + " " + currency,
            number(money.output().machinesCount(), 0)
                + " × "
                + study.machine().name()
                + ", options for this layout included"));
    Optional<MoneyAgainstToday> against = MoneyAgainstToday.find(study.inquiry(), money);
    if (against.isEmpty()) {
      lines.add(new MoneyLine("Today", "not known", "the inquiry says nothing about it"));
      return lines;
    }
    Today today = study.inquiry().today();
    lines.add(
        new MoneyLine(
            "Today",
            number(against.get().saving().todayPerPiece(), 3) + " " + currency + " a piece",
            today == null ? "" : today.how()));
    lines.add(
        new MoneyLine(
            "Saving in a year", number(against.get().saving().perYear(), 0) + " " + currency, ""));
    lines.add(new MoneyLine("Payback", against.get().payback().words(), "not discounted"));
    return lines;
  }
}
