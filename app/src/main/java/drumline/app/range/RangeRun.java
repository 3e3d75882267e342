package drumline.app.range;

import drumline.app.layout.EdgeCost;
import drumline.app.layout.FittedRoute;
import drumline.app.layout.LaidOut;
import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.PlannedCase;
import drumline.planner.check.Finding;
import drumline.planner.check.TimelineAudit;
import drumline.planner.slack.FreeSpeeds;
import drumline.planner.slack.SlackSpending;
import drumline.planner.translate.SpeedRefinement;
import drumline.shape.section.PartSection;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.material.MaterialSpread;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Puts a finished layout on the clock again with the material at its worst and at its best.
 *
 * <p>The route is derived again with the moved windows and force, so that what a print, a spindle
 * or a collet sets stays as it is; the places, the order and the divisions stay; the speeds move
 * with their windows, and are then set by the same steps as the study's own. Nothing is planned
 * again: a layout planned for the other end might be better there.
 */
public final class RangeRun {
  private final Inquiry inquiry;
  private final Machine machine;
  private final UnaryOperator<Route> divide;
  private final Set<String> pinned;
  private final GripDiameters diameters;

  public RangeRun(
      Inquiry inquiry, Machine machine, UnaryOperator<Route> divide, Set<String> pinned) {
    this.inquiry = inquiry;
    this.machine = machine;
    this.divide = divide;
    this.pinned = pinned;
    this.diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
  }

  /**
   * The range of a layout; empty where the other figures ask for other operations.
   *
   * @param route the layout's route
   */
  public Optional<CuttingRange> find(Route route, LaidOut laid) {
    double partVolumeMm3 = PartSection.of(inquiry.part(), inquiry.bar()).piece().volumeMm3();
    Planned planned = new Planned(route, laid.layout(), laid.timeline(), partVolumeMm3);
    Optional<CuttingRange.End> best = end(MaterialSpread.best(inquiry.material()), planned);
    Optional<CuttingRange.End> worst = end(MaterialSpread.worst(inquiry.material()), planned);
    return best.flatMap(b -> worst.map(w -> new CuttingRange(b, w)));
  }

  private record Planned(Route route, Layout layout, Timeline timeline, double partVolumeMm3) {}

  private Optional<CuttingRange.End> end(Material material, Planned planned) {
    Inquiry moved = inquiry.withMaterial(material);
    Route route = divide.apply(FittedRoute.of(moved, machine));
    return ids(route).equals(ids(planned.route()))
        ? Optional.of(end(moved, route, planned))
        : Optional.empty();
  }

  private CuttingRange.End end(Inquiry moved, Route route, Planned planned) {
    CycleClock clock = new CycleClock(route, machine, diameters);
    Layout start =
        MovedSpeeds.of(planned.route(), route, machine, diameters, pinned)
            .move(planned.layout(), planned.timeline());
    Layout fast = SpeedRefinement.refine(route, machine, diameters, start, pinned);
    Layout slowed =
        SlackSpending.spend(route, machine, clock, fast, new EdgeCost(moved, machine), pinned);
    Layout layout = FreeSpeeds.settle(route, clock, slowed);
    Timeline timeline = clock.timeline(layout);
    MoneyStudy money =
        MoneyStudy.of(
            PlannedCase.of(
                moved,
                machine,
                route,
                layout,
                timeline,
                planned.partVolumeMm3(),
                Assumptions.usual()));
    List<String> broken =
        TimelineAudit.audit(route, machine, diameters, layout, timeline).findings().stream()
            .filter(finding -> !finding.isPassed())
            .map(RangeRun::words)
            .toList();
    return new CuttingRange.End(timeline.cycleS(), money.cost().total(), broken);
  }

  private static String words(Finding finding) {
    return finding.name().replace('-', ' ') + ": " + finding.detail();
  }

  private static List<String> ids(Route route) {
    return route.operations().stream().map(Operation::id).sorted().toList();
  }

  /** All positions of a timeline, the pick-up spindle's last. */
  static List<PositionTimeline> all(Timeline timeline) {
    List<PositionTimeline> all = new ArrayList<>(timeline.positions());
    PositionTimeline back = timeline.back();
    if (back != null) {
      all.add(back);
    }
    return all;
  }

  /** The operations of all positions. */
  static List<OperationSpan> spans(Timeline timeline) {
    return all(timeline).stream().flatMap(p -> p.operations().stream()).toList();
  }
}
