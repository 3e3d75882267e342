package drumline.app.report;

import static drumline.sheets.Figures.number;

import drumline.app.study.MachineStudy;
import drumline.app.study.MoneyAgainstToday;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.MoneyStudy;
import drumline.economics.triage.Triage;
import drumline.sheets.content.KeyFigure;
import drumline.sheets.content.StudyHead;
import drumline.sheets.content.plain.Tone;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.part.Bar;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Head line of a study. */
final class HeadFigures {
  private HeadFigures() {}

  static StudyHead head(MachineStudy study, PlannedLayout plan, Triage triage, LocalDate date) {
    Inquiry inquiry = study.inquiry();
    return new StudyHead(
        inquiry.title(),
        inquiry.customer(),
        inquiry.number(),
        date,
        study.machine().title() + " (" + study.machine().name() + ")",
        inquiry.material().name() + ", " + bar(inquiry.bar()),
        triage.verdict(),
        summary(study, plan));
  }

  static List<KeyFigure> keyFigures(MachineStudy study, PlannedLayout plan) {
    Timeline timeline = plan.timeline();
    MoneyStudy money = plan.money();
    List<KeyFigure> figures = new ArrayList<>();
    figures.add(
        figure(
            "Cycle time",
            number(timeline.cycleS(), 2),
            "s",
            plan.range()
                    .map(r -> range(number(r.cycleLowS(), 1), number(r.cycleHighS(), 1)))
                    .orElse("")
                + governs(study, timeline)
                + " governs; index "
                + number(timeline.indexS(), 2)
                + " s",
            Tone.MARKED));
    figures.add(
        figure(
            "Lower bound",
            number(plan.lowerBoundS(), 2),
            "s",
            plan.isProvenOptimal()
                ? "the planner's layout is proven the best"
                : "gap " + number(plan.gapPct(), 1) + " %",
            Tone.PLAIN));
    figures.add(
        figure(
            "Net output",
            number(money.output().netPerHour(), 0),
            "pieces/h",
            number(money.output().grossPerHour(), 0) + " gross",
            Tone.PLAIN));
    figures.add(
        figure(
            "Piece cost",
            number(money.cost().total(), 3),
            money.cost().currency(),
            plan.range().map(r -> range(number(r.costLow(), 3), number(r.costHigh(), 3))).orElse("")
                + today(study),
            Tone.PLAIN));
    payback(study, money).ifPresent(figures::add);
    figures.add(
        figure(
            "Machines",
            number(money.output().machinesCount(), 0),
            money.output().machinesCount() == 1 ? "machine" : "machines",
            number(money.output().loadPct(), 0)
                + " % loaded for "
                + number((double) study.inquiry().volumes().perYearCount(), 0)
                + " a year",
            Tone.PLAIN));
    return figures;
  }

  /** The governing position as a reader names it. */
  static String governs(MachineStudy study, Timeline timeline) {
    return timeline.governing() > study.machine().lastPosition()
        ? "pick-up spindle"
        : "position " + timeline.governing();
  }

  private static String range(String low, String high) {
    return low + " to " + high + " with the uncertainty of the cutting figures; ";
  }

  private static KeyFigure figure(String label, String value, String unit, String note, Tone tone) {
    return new KeyFigure(label, value, unit, note, tone);
  }

  private static String today(MachineStudy study) {
    var today = study.inquiry().today();
    return today == null
        ? "today's cost is not known"
        : "today "
            + number(study.inquiry().rates().convert(today.costPerPiece(), today.currency()), 3);
  }

  private static Optional<KeyFigure> payback(MachineStudy study, MoneyStudy money) {
    return MoneyAgainstToday.find(study.inquiry(), money)
        .map(
            against ->
                against.payback().simpleMonthsCount().isPresent()
                    ? figure(
                        "Payback",
                        number(Math.ceil(against.payback().simpleMonthsCount().getAsDouble()), 0),
                        "months",
                        "simple, machine and options over the yearly saving",
                        Tone.PLAIN)
                    : figure("Payback", "none", "", "a piece would not cost less", Tone.MARKED));
  }

  private static String summary(MachineStudy study, PlannedLayout plan) {
    return String.format(
        Locale.ROOT,
        "%d operations in %d positions%s: a piece every %.2f s, %s.",
        study.route().operations().size(),
        study.machine().lastPosition(),
        plan.timeline().back() == null ? "" : " and at the pick-up spindle",
        plan.timeline().cycleS() / plan.timeline().piecesPerIndexCount(),
        plan.isProvenOptimal()
            ? "proven the shortest for this route at these speeds"
            : String.format(
                Locale.ROOT, "at most %.1f %% above the shortest possible", plan.gapPct()));
  }

  private static String bar(Bar bar) {
    String size =
        switch (bar.shape()) {
          case ROUND -> bar.boreMm() > 0 ? "tube Ø" : "round bar Ø";
          case HEXAGON -> "hexagon bar ";
          case SQUARE -> "square bar ";
        };
    String bore = bar.boreMm() > 0 ? "/" + number(bar.boreMm(), 1) : "";
    return size + number(bar.sizeMm(), 2) + bore + " mm " + bar.toleranceClass();
  }
}
