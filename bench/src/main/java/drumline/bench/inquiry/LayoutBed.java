package drumline.bench.inquiry;

import drumline.app.ask.ListInquiry;
import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.study.MachineStudy;
import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.planner.check.TimelineAudit;
import drumline.planner.check.TimelineReport;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A planned layout of about forty operations, and what moving one of them makes of it. */
@State(Scope.Benchmark)
public class LayoutBed {
  private static final int FEWEST_OPERATIONS = 38;
  private static final int MOST_OPERATIONS = 46;
  private static final int MOST_SEEDS = 400;

  private final MachineStudy study = find();
  private final GripDiameters diameters =
      GripDiameters.of(study.inquiry().part(), study.inquiry().bar());
  private final CycleClock clock = new CycleClock(study.route(), study.machine(), diameters);
  private final Layout planned = study.plan().orElseThrow().layout();
  private int turn;

  /** Operations of the route. */
  public int operationCount() {
    return study.route().operations().size();
  }

  /** The layout on the clock. */
  public Timeline evaluate() {
    return clock.timeline(planned);
  }

  /** Another clock, another layout, its timeline and its audit, as after a move by hand. */
  public TimelineReport whatIf() {
    Layout moved = moved();
    Supplier<CycleClock> fresh = () -> new CycleClock(study.route(), study.machine(), diameters);
    Timeline timeline = fresh.get().timeline(moved);
    return TimelineAudit.audit(study.route(), study.machine(), diameters, moved, timeline);
  }

  /** The layout with the next operation on the next one's slide. */
  private Layout moved() {
    List<Placement> placements = new ArrayList<>(planned.placements());
    turn = (turn + 1) % placements.size();
    Placement one = placements.get(turn);
    String slideId = placements.get((turn + 1) % placements.size()).slideId();
    placements.set(
        turn,
        new Placement(one.operationId(), slideId, one.spindleRevPerMin(), one.plannedStartS()));
    return new Layout(planned.machineName(), placements);
  }

  private static boolean isAboutForty(Route route) {
    int count = route.operations().size();
    return count >= FEWEST_OPERATIONS && count <= MOST_OPERATIONS;
  }

  private static MachineStudy find() {
    for (int seed = 1; seed <= MOST_SEEDS; seed++) {
      Opened opened = OpenGenerated.open(seed, 8);
      if (opened.isWrong() || !isAboutForty(ListInquiry.route(opened.inquiry()))) {
        continue;
      }
      PlanInquiry plan = PlanInquiry.plan(opened, List.of(), 0.2, 1, SearchWatch.silent());
      MachineStudy study = plan.studies().get(0);
      if (study.isFeasible()) {
        return study;
      }
    }
    throw new IllegalStateException("no generated inquiry has about forty operations");
  }
}
