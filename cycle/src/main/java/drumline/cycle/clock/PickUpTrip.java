package drumline.cycle.clock;

import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.PositionTimeline.FixedSpan;
import drumline.shop.machine.PickUp;
import drumline.shop.operation.SpindleCondition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The pick-up spindle's way from gripping the piece to standing in front of the last position
 * again: grip, cut-off, retract, back-working, eject, return.
 */
final class PickUpTrip {
  private static final SpindleState UNKNOWN = new SpindleState(SpindleCondition.TURNING_ANY, 0);

  private final PickUp pickUp;
  private final WorkSpindle spindle;
  private final RouteRules rules;

  PickUpTrip(PickUp pickUp, WorkSpindle spindle, RouteRules rules) {
    this.pickUp = pickUp;
    this.spindle = spindle;
    this.rules = rules;
  }

  /** The trip on its own clock, which begins when gripping does; its slack is left at 0. */
  PositionTimeline timeline(int position, List<Job> jobs, @Nullable Job cutOff) {
    SpindleState cutOffState = cutOff == null ? UNKNOWN : cutOff.state();
    double partedS = pickUp.gripS() + (cutOff == null ? 0 : cutOff.endS() - cutOff.startS());
    double readyS = partedS + pickUp.retractS();
    PositionSchedule schedule =
        new PositionSchedule(
            rules, spindle, state -> Math.max(readyS, partedS + spindle.reachS(state)));
    schedule.placeAll(jobs);
    double workedS = Math.max(readyS, schedule.endS());
    double outS = workedS + pickUp.ejectS();
    double backS = outS + pickUp.returnS();
    SpindleTrace trace = new SpindleTrace(0);
    trace.keep(cutOffState, partedS);
    trace.follow(schedule.placed(), spindle, firstChangeS(schedule), workedS);
    return new PositionTimeline(
        position,
        CycleClock.spans(schedule.placed()),
        trace.spans(),
        List.of(
            new FixedSpan("grip", 0, pickUp.gripS()),
            new FixedSpan("cut off", pickUp.gripS(), partedS),
            new FixedSpan("retract", partedS, readyS),
            new FixedSpan("eject", workedS, outS),
            new FixedSpan("return", outS, backS)),
        backS,
        0);
  }

  private double firstChangeS(PositionSchedule schedule) {
    return schedule.placed().stream()
        .filter(job -> !job.state().isFree())
        .findFirst()
        .map(job -> spindle.reachS(job.state()))
        .orElse(0.0);
  }
}
