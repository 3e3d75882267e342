package drumline.app.view;

import drumline.app.answer.money.MoneyFigures;
import drumline.app.answer.money.MoneyFigures.Alternative;
import drumline.app.answer.money.MoneyFigures.Assumption;
import drumline.app.answer.money.MoneyFigures.OutputFigures;
import drumline.app.answer.money.MoneyFigures.ShareAmount;
import drumline.app.answer.money.MoneyFigures.TodayFigures;
import drumline.app.answer.money.PaybackCurve;
import drumline.app.answer.money.SwingList;
import drumline.app.report.StudyPictures;
import drumline.app.study.MachineStudy;
import drumline.app.study.MoneyAgainstToday;
import drumline.app.study.PlannedLayout;
import drumline.app.study.SequentialStudy;
import drumline.drawing.svg.Look;
import drumline.economics.cost.CostLine;
import drumline.economics.cost.Payback;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.Sensitivity;
import drumline.shop.inquiry.Today;
import drumline.shop.machine.Machine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The money's leaf. */
public final class MoneyView {
  private static final double CHANGE_PCT = 10;
  private static final int LONGEST_MONTHS = 120;
  private static final double WRITE_OFF_YEARS = Assumptions.usual().writeOffYearsCount();
  private static final String TODAY = "today";

  private final MachineStudy study;
  private final PlannedLayout plan;
  private final MoneyStudy money;
  private final List<Alternative> alternatives = new ArrayList<>();
  private final List<VolumeView.Way> ways = new ArrayList<>();

  /**
   * Money of a planned study.
   *
   * @param others the same inquiry on other machines
   * @throws IllegalArgumentException if the study has no layout
   */
  public MoneyView(MachineStudy study, List<MachineStudy> others) {
    this.study = study;
    this.plan =
        study
            .plan()
            .orElseThrow(
                () -> new IllegalArgumentException("study: no layout, allowed: a planned study"));
    this.money = plan.money();
    planned(study, "layout");
    others.forEach(other -> planned(other, "other layout"));
    for (SequentialStudy one : SequentialStudy.all(study, plan)) {
      add(one.machine(), "one after another", one.cycleS(), null, one.money());
    }
    Today today = study.inquiry().today();
    if (today != null) {
      today(today);
    }
  }

  /** The figures. */
  public MoneyFigures figures() {
    return new MoneyFigures(
        money.cost().currency(),
        Rounded.perPiece(money.cost().total()),
        money.cost().shares().stream()
            .map(
                s ->
                    new ShareAmount(
                        Rounded.word(s.kind()), s.kind().words(), Rounded.perPiece(s.amount())))
            .toList(),
        StudyPictures.cost(study, plan, Look.INSIDE),
        output(),
        todayFigures(),
        alternatives,
        VolumeView.curve(study.inquiry().volumes().perYearCount(), ways),
        MoneyAgainstToday.find(study.inquiry(), money)
            .map(against -> payback(against.payback()))
            .orElse(null),
        swings(),
        assumptions());
  }

  private void planned(MachineStudy one, String kind) {
    one.plan()
        .ifPresent(
            p -> add(one.machine(), kind, p.timeline().cycleS(), p.lowerBoundS(), p.money()));
  }

  private void add(
      Machine machine, String kind, double cycleS, @Nullable Double boundS, MoneyStudy its) {
    alternatives.add(
        new Alternative(
            machine.name(),
            machine.title(),
            kind,
            Rounded.seconds(cycleS),
            boundS == null ? null : Rounded.seconds(boundS),
            Rounded.of(its.output().netPerHour(), 1),
            its.output().machinesCount(),
            Rounded.perPiece(its.cost().total()),
            Rounded.money(its.investment())));
    ways.add(new VolumeView.Way(machine.name(), its.yearLine(WRITE_OFF_YEARS)));
  }

  private void today(Today today) {
    BigDecimal cost = converted(today);
    Double cycle = today.cycleS() > 0 ? Double.valueOf(today.cycleS()) : null;
    alternatives.add(
        new Alternative(
            TODAY, today.how(), TODAY, cycle, null, null, null, Rounded.perPiece(cost), null));
    ways.add(new VolumeView.Way(TODAY, new CostLine(TODAY, BigDecimal.ZERO, cost)));
  }

  private BigDecimal converted(Today today) {
    return study.inquiry().rates().convert(today.costPerPiece(), today.currency());
  }

  private @Nullable TodayFigures todayFigures() {
    Today today = study.inquiry().today();
    return today == null
        ? null
        : new TodayFigures(
            today.how(),
            today.cycleS() > 0 ? today.cycleS() : null,
            Rounded.perPiece(converted(today)));
  }

  private OutputFigures output() {
    return new OutputFigures(
        Rounded.of(money.output().grossPerHour(), 1),
        Rounded.of(money.output().netPerHour(), 1),
        Rounded.of(money.output().loadPct(), 1),
        money.output().machinesCount(),
        Math.toIntExact((long) money.bar().loadsPerBarCount() * money.bar().piecesPerLoadCount()),
        Rounded.of(money.bar().yieldPct(), 1),
        Rounded.of(money.output().availabilityPct(), 1),
        Rounded.of(money.output().scrapPct(), 2));
  }

  private static PaybackCurve payback(Payback payback) {
    OptionalDouble cash = payback.cashMonthsCount();
    int last =
        cash.isPresent()
            ? (int) Math.min(LONGEST_MONTHS, Math.max(12, Math.ceil(1.5 * cash.getAsDouble())))
            : 60;
    BigDecimal perYear = payback.savingPerYear().add(payback.writeOffPerYear());
    List<PaybackCurve.Point> curve = new ArrayList<>();
    for (int month = 0; month <= last; month++) {
      BigDecimal earned = perYear.multiply(BigDecimal.valueOf(month / 12.0));
      curve.add(
          new PaybackCurve.Point(month, Rounded.money(earned.subtract(payback.investment()))));
    }
    return new PaybackCurve(
        Rounded.money(payback.investment()),
        Rounded.money(payback.savingPerYear()),
        HeadView.months(payback.simpleMonthsCount()),
        HeadView.months(cash),
        payback.words(),
        curve);
  }

  private SwingList swings() {
    Sensitivity sensitivity = Sensitivity.of(money.given(), CHANGE_PCT);
    return new SwingList(
        CHANGE_PCT,
        sensitivity.effects().stream()
            .map(
                e ->
                    new SwingList.Swing(
                        Rounded.word(e.assumed()),
                        e.assumed().words(),
                        Rounded.perPiece(e.costWhenLess()),
                        Rounded.perPiece(e.costWhenMore()),
                        Rounded.perPiece(e.swing())))
            .toList());
  }

  private static List<Assumption> assumptions() {
    return Assumptions.usual().words().stream()
        .map(words -> new Assumption(words, "common practice, from memory"))
        .toList();
  }
}
