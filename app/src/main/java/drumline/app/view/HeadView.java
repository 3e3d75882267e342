package drumline.app.view;

import drumline.app.answer.Head;
import drumline.app.layout.LaidOut;
import drumline.app.study.MoneyAgainstToday;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.MoneyStudy;
import drumline.economics.triage.Triage;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Today;
import drumline.shop.machine.Machine;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Figures of the head line. */
public final class HeadView {
  private HeadView() {}

  /** Nothing is known: the text has errors. */
  public static Head unknown() {
    return new Head(
        null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
        null, null);
  }

  /** The piece is known, but nothing is planned. */
  public static Head unplanned(Inquiry inquiry, Triage triage) {
    return new Head(
        Rounded.word(triage.verdict()),
        triage.verdict().words(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        today(inquiry),
        inquiry.rates().currency(),
        null,
        null,
        null);
  }

  /**
   * The head line of a layout.
   *
   * @param boundS bound on the cycle; empty where the text was changed since it was found
   */
  public static Head planned(
      Inquiry inquiry,
      Machine machine,
      Triage triage,
      LaidOut laid,
      OptionalDouble boundS,
      boolean isProvenOptimal) {
    Timeline timeline = laid.timeline();
    Optional<MoneyStudy> money = laid.money();
    Optional<MoneyAgainstToday> against = money.flatMap(m -> MoneyAgainstToday.find(inquiry, m));
    return new Head(
        Rounded.word(triage.verdict()),
        triage.verdict().words(),
        Rounded.seconds(timeline.cycleS()),
        boundS.isPresent() ? Rounded.seconds(boundS.getAsDouble()) : null,
        gap(timeline.cycleS(), boundS),
        isProvenOptimal,
        timeline.governing(),
        governs(machine, timeline),
        money.map(m -> Rounded.of(m.output().netPerHour(), 1)).orElse(null),
        money.map(m -> m.output().machinesCount()).orElse(null),
        money.map(m -> Rounded.of(m.output().loadPct(), 1)).orElse(null),
        money.map(m -> Rounded.perPiece(m.cost().total())).orElse(null),
        today(inquiry),
        inquiry.rates().currency(),
        against.map(a -> months(a.payback().simpleMonthsCount())).orElse(null),
        against.map(a -> a.payback().words()).orElse(null),
        laid.audit().broken().size());
  }

  /** The position that sets the cycle as a reader names it. */
  static String governs(Machine machine, Timeline timeline) {
    return name(machine, timeline.governing());
  }

  static String name(Machine machine, int position) {
    return position > machine.lastPosition() ? "pick-up spindle" : "position " + position;
  }

  /** Share of the cycle above the bound, in percent; null where there is no bound. */
  static @Nullable Double gap(double cycleS, OptionalDouble boundS) {
    return boundS.isPresent()
        ? Rounded.of(Math.max(0, 100 * (cycleS - boundS.getAsDouble()) / cycleS), 2)
        : null;
  }

  static @Nullable Long months(OptionalDouble monthsCount) {
    return monthsCount.isPresent() ? (long) Math.ceil(monthsCount.getAsDouble()) : null;
  }

  private static @Nullable BigDecimal today(Inquiry inquiry) {
    Today today = inquiry.today();
    return today == null
        ? null
        : Rounded.perPiece(inquiry.rates().convert(today.costPerPiece(), today.currency()));
  }
}
