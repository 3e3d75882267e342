package drumline.app.economic;

import drumline.app.layout.EdgeCost;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.PlannedCase;
import drumline.planner.check.TimelineAudit;
import drumline.planner.slack.SlackSpending;
import drumline.shape.section.PartSection;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Cost of a good piece against the cycle: the shortest layout with its tools slowed to longer and
 * longer cycles, each priced.
 *
 * <p>Source: [BASIS] 7.3 (change times at full speed make the cheapest cycle longer than the
 * shortest), [HITOMI] (abstract). Known limits: places stay as at the shortest cycle; feeds stay.
 *
 * @param points cycles with their cost, the shortest first
 */
public record EconomicCycle(List<Point> points) {
  private static final double[] RATIOS = {1, 1.03, 1.07, 1.12, 1.2, 1.3, 1.45};

  /**
   * One cycle.
   *
   * @param layout places and speeds
   * @param cycleS its cycle
   * @param money its output and cost
   */
  public record Point(Layout layout, double cycleS, MoneyStudy money) {}

  /** Copies the list. */
  public EconomicCycle {
    points = List.copyOf(points);
  }

  /** The curve of a planned study; only layouts that pass the audit are on it. */
  public static EconomicCycle of(MachineStudy study, PlannedLayout plan) {
    Inquiry inquiry = study.inquiry();
    GripDiameters diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
    CycleClock clock = new CycleClock(study.route(), study.machine(), diameters);
    Set<String> pinned =
        inquiry.wishes().pins().stream()
            .filter(pin -> pin.spindleRevPerMin().isPresent())
            .map(Pin::operationId)
            .collect(Collectors.toUnmodifiableSet());
    List<Point> points = new ArrayList<>();
    Layout layout = plan.layout();
    points.add(new Point(layout, plan.timeline().cycleS(), plan.money()));
    for (double ratio : RATIOS) {
      if (ratio > 1) {
        layout =
            SlackSpending.spend(
                study.route(),
                study.machine(),
                clock,
                layout,
                new EdgeCost(inquiry, study.machine()),
                pinned,
                ratio * plan.timeline().cycleS());
        add(study, diameters, clock, layout, points);
      }
    }
    return new EconomicCycle(points);
  }

  private static void add(
      MachineStudy study,
      GripDiameters diameters,
      CycleClock clock,
      Layout layout,
      List<Point> points) {
    Machine machine = study.machine();
    Timeline timeline = clock.timeline(layout);
    boolean isLonger = timeline.cycleS() > points.get(points.size() - 1).cycleS() + 1e-6;
    if (isLonger
        && TimelineAudit.audit(study.route(), machine, diameters, layout, timeline).isPassed()) {
      Inquiry inquiry = study.inquiry();
      double volumeMm3 = PartSection.of(inquiry.part(), inquiry.bar()).piece().volumeMm3();
      points.add(
          new Point(
              layout,
              timeline.cycleS(),
              MoneyStudy.of(
                  PlannedCase.of(
                      inquiry,
                      machine,
                      study.route(),
                      layout,
                      timeline,
                      volumeMm3,
                      Assumptions.usual()))));
    }
  }

  /** The cycle at which a good piece is cheapest. */
  public Point cheapest() {
    return points.stream()
        .min(Comparator.comparing(point -> point.money().cost().total()))
        .orElseThrow();
  }

  /** The cheapest cycle where it is not the shortest one. */
  public Optional<Point> findLonger() {
    Point cheapest = cheapest();
    return cheapest.equals(points.get(0)) ? Optional.empty() : Optional.of(cheapest);
  }
}
