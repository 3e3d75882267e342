package drumline.planner.check.sample;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.planner.check.TimelineAudit;
import drumline.planner.check.TimelineReport;
import drumline.planner.translate.sample.DrumSample;
import drumline.planner.translate.sample.RouteSample;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A layout of the sample pin made by hand, sound as it stands, and what can be broken about it.
 *
 * @param route route that the audit sees
 * @param machine machine that the audit sees
 * @param layout layout that the audit sees
 * @param timeline timeline that the audit sees
 */
public record PinStudy(Route route, Machine machine, Layout layout, Timeline timeline) {
  private static final GripDiameters DIAMETERS = new GripDiameters(20, 16);

  /** The sound study. */
  public static PinStudy sound() {
    return of(RouteSample.pin(), placements());
  }

  private static List<Placement> placements() {
    return List.of(
        new Placement("face", "1-cross", 3500, 0),
        new Placement("drill", "1-end", 4200, 1),
        new Placement("rough", "2-cross", 3000, 0),
        new Placement("groove", "2-cross", 2600, 1),
        new Placement("bore", "3-end", 4000, 0),
        new Placement("finish", "3-cross", 4000, 0),
        new Placement("thread", "4-cross", 1800, 0),
        new Placement("tap", "4-end", 0, 0),
        new Placement("flats", "5-cross", 0, 0),
        new Placement("chamfer", "6-end", 3000, 0),
        new Placement("cut-off", "6-cross", 3000, 1),
        new Placement("back-face", "back-1", 4500, 0));
  }

  private static PinStudy of(Route route, List<Placement> placements) {
    Machine machine = DrumSample.independent(6);
    Layout layout = new Layout(machine.name(), placements);
    return new PinStudy(
        route, machine, layout, new CycleClock(route, machine, DIAMETERS).timeline(layout));
  }

  /** The report on this study. */
  public TimelineReport report() {
    return TimelineAudit.audit(route, machine, DIAMETERS, layout, timeline);
  }

  /** An operation placed elsewhere, and the clock run again. */
  public PinStudy placed(String id, String slideId, double revPerMin) {
    return of(
        route,
        layout.placements().stream()
            .map(
                p ->
                    p.operationId().equals(id)
                        ? new Placement(id, slideId, revPerMin, p.plannedStartS())
                        : p)
            .toList());
  }

  /** An operation without a place, the timeline as it was. */
  public PinStudy without(String id) {
    List<Placement> rest =
        layout.placements().stream().filter(p -> !p.operationId().equals(id)).toList();
    return new PinStudy(route, machine, new Layout(machine.name(), rest), timeline);
  }

  /** Another machine for the audit only. */
  public PinStudy on(Machine other) {
    return new PinStudy(route, other, layout, timeline);
  }

  /** Another timeline for the audit only. */
  public PinStudy with(UnaryOperator<Timeline> change) {
    return new PinStudy(route, machine, layout, change.apply(timeline));
  }

  /** An operation that is in truth another, for the audit only. */
  public PinStudy withOperation(String id, UnaryOperator<Operation> change) {
    List<Operation> operations =
        route.operations().stream().map(o -> o.id().equals(id) ? change.apply(o) : o).toList();
    Route other = new Route(operations, route.orders(), route.pairs(), route.problems());
    return new PinStudy(other, machine, layout, timeline);
  }
}
