package drumline.app.report;

import static drumline.sheets.Figures.number;

import drumline.app.economic.EconomicCycle;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.app.study.SequentialStudy;
import drumline.economics.study.MoneyStudy;
import drumline.sheets.content.money.ComparisonTable;
import drumline.sheets.content.money.ComparisonTable.Column;
import drumline.sheets.content.plain.Tone;
import drumline.shop.inquiry.Today;
import java.util.ArrayList;
import java.util.List;

/** The same piece made in other ways, side by side. */
public final class AlternativeTable {
  private static final List<String> LINES =
      List.of(
          "cycle, s",
          "lower bound, s",
          "good pieces per hour",
          "machines needed",
          "piece cost",
          "investment");
  private static final String NONE = "–";

  private AlternativeTable() {}

  static ComparisonTable table(
      MachineStudy study, PlannedLayout plan, EconomicCycle economic, List<MachineStudy> others) {
    List<Column> columns = new ArrayList<>();
    columns.add(planned(study, plan, Tone.MARKED));
    economic
        .findLonger()
        .ifPresent(
            point ->
                columns.add(
                    column(
                        study.machine().name() + ", cheapest cycle",
                        point.cycleS(),
                        NONE,
                        point.money(),
                        Tone.PLAIN)));
    others.forEach(other -> columns.add(planned(other)));
    SequentialStudy.all(study, plan).forEach(one -> columns.add(sequential(one)));
    Today today = study.inquiry().today();
    if (today != null) {
      columns.add(today(study, today));
    }
    return new ComparisonTable(LINES, columns);
  }

  /** Several machines side by side, for the terminal. */
  public static ComparisonTable machines(List<MachineStudy> studies) {
    return new ComparisonTable(LINES, studies.stream().map(AlternativeTable::planned).toList());
  }

  private static Column planned(MachineStudy study) {
    return study
        .plan()
        .map(plan -> planned(study, plan, Tone.PLAIN))
        .orElseGet(
            () ->
                new Column(
                    study.machine().name(),
                    List.of("no layout", NONE, NONE, NONE, NONE, NONE),
                    Tone.PLAIN));
  }

  private static Column planned(MachineStudy study, PlannedLayout plan, Tone tone) {
    return column(
        study.machine().name(),
        plan.timeline().cycleS(),
        number(plan.lowerBoundS(), 2),
        plan.money(),
        tone);
  }

  private static Column sequential(SequentialStudy one) {
    return column(one.machine().name(), one.cycleS(), NONE, one.money(), Tone.PLAIN);
  }

  private static Column column(
      String title, double cycleS, String bound, MoneyStudy money, Tone tone) {
    String currency = " " + money.cost().currency();
    return new Column(
        title,
        List.of(
            number(cycleS, 2),
            bound,
            number(money.output().netPerHour(), 0),
            number(money.output().machinesCount(), 0),
            number(money.cost().total(), 3) + currency,
            number(money.investment(), 0) + currency),
        tone);
  }

  private static Column today(MachineStudy study, Today today) {
    var cost = study.inquiry().rates().convert(today.costPerPiece(), today.currency());
    String cycle = today.cycleS() > 0 ? number(today.cycleS(), 1) : NONE;
    return new Column(
        "today",
        List.of(
            cycle,
            NONE,
            NONE,
            NONE,
            number(cost, 3) + " " + study.inquiry().rates().currency(),
            NONE),
        Tone.PLAIN);
  }
}
