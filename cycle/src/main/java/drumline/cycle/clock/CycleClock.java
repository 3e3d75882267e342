package drumline.cycle.clock;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.PositionTimeline.FixedSpan;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts layouts of one route on one machine on the clock.
 *
 * <p>In each position the operations keep their planned order and begin as early as the ones before
 * allow: the slide is free and has shifted its tool; what must come first, or must not run at the
 * same time, has ended; work in another spindle condition has ended and the spindle has changed;
 * and the shares of torque and grip of cuts that run together stay within 1. An operation that
 * exceeds a limit by itself is placed alone; the audit reports it. The first condition of a
 * position is reached during the index; what this takes longer than the index delays its first
 * operations.
 *
 * <p>The cut-off begins when all else in its position has ended, not before the pick-up spindle has
 * gripped; the bar is fed after it. Cycle = the latest end at any position + index, or the pick-up
 * spindle's round trip divided by the number of pick-up spindles, whichever is longer.
 *
 * <p>Source: [BASIS] 7.1 (longest position plus index sets the cycle). Known limits: several held
 * spindles at one angle do not work together; a spindle that is held or controlled changes its
 * angle without extra time, which belongs to the operation.
 */
public final class CycleClock {
  private final Machine machine;
  private final RouteRules rules;
  private final Map<String, Operation> operations = new HashMap<>();
  private final Map<String, ToolSlide> slides = new HashMap<>();
  private final Map<String, Integer> positionBySlide = new HashMap<>();
  private final WorkSpindle drum;
  private final @Nullable PickUpTrip trip;

  /**
   * @throws IllegalArgumentException if the machine has no drum
   */
  public CycleClock(Route route, Machine machine, GripDiameters diameters) {
    if (machine.kind() != Machine.Kind.DRUM && machine.kind() != Machine.Kind.ROTARY_TRANSFER) {
      throw new IllegalArgumentException(
          "machine is " + machine.name() + " of kind " + machine.kind() + ", allowed: a drum");
    }
    this.machine = machine;
    rules = new RouteRules(route);
    route.operations().forEach(operation -> operations.put(operation.id(), operation));
    for (Position position : machine.positions()) {
      position.slides().forEach(slide -> addSlide(slide, position.number()));
    }
    drum = WorkSpindle.ofDrum(machine, diameters);
    PickUp pickUp = machine.pickUp();
    if (pickUp == null) {
      trip = null;
    } else {
      pickUp.slides().forEach(slide -> addSlide(slide, machine.lastPosition() + 1));
      trip = new PickUpTrip(pickUp, WorkSpindle.ofPickUp(machine, diameters), rules);
    }
  }

  /**
   * What every tool and spindle does in one cycle.
   *
   * @throws IllegalArgumentException if a placement names an unknown operation or slide, a turning
   *     operation has no speed, or order rules make operations wait for each other
   */
  public Timeline timeline(Layout layout) {
    int last = machine.lastPosition();
    List<List<Job>> jobs = jobs(layout);
    List<PositionTimeline> drumTimelines = new ArrayList<>();
    Job cutOff = null;
    for (int position = 1; position <= last; position++) {
      PositionSchedule schedule = schedule(jobs.get(position));
      for (Job job : schedule.placed()) {
        cutOff = job.operation().kind() == OperationKind.CUT_OFF ? job : cutOff;
      }
      drumTimelines.add(drumTimeline(position, schedule));
    }
    PositionTimeline back =
        trip == null ? null : trip.timeline(last + 1, jobs.get(last + 1), cutOff);
    return balanced(drumTimelines, back);
  }

  static List<OperationSpan> spans(List<Job> placed) {
    return placed.stream()
        .sorted(Comparator.comparingDouble(Job::startS).thenComparing(Job::id))
        .map(Job::span)
        .toList();
  }

  private void addSlide(ToolSlide slide, int position) {
    slides.put(slide.id(), slide);
    positionBySlide.put(slide.id(), position);
  }

  /** Jobs by position number; index 0 stays empty. */
  private List<List<Job>> jobs(Layout layout) {
    List<List<Job>> jobs = new ArrayList<>();
    for (int position = 0; position <= machine.lastPosition() + 1; position++) {
      jobs.add(new ArrayList<>());
    }
    for (Placement placement : layout.placements()) {
      Operation operation = operations.get(placement.operationId());
      ToolSlide slide = slides.get(placement.slideId());
      if (operation == null || slide == null) {
        throw new IllegalArgumentException(
            "placement is "
                + placement
                + ", allowed: an operation of the route on a slide of "
                + machine.name());
      }
      jobs.get(positionBySlide.getOrDefault(slide.id(), 0))
          .add(Job.of(operation, slide, placement));
    }
    return jobs;
  }

  private PositionSchedule schedule(List<Job> jobs) {
    PositionSchedule schedule = new PositionSchedule(rules, drum, this::lateS);
    schedule.placeAll(
        jobs.stream().filter(job -> job.operation().kind() != OperationKind.CUT_OFF).toList());
    PickUp pickUp = machine.pickUp();
    double grippedS = pickUp == null ? 0 : pickUp.gripS();
    jobs.stream()
        .filter(job -> job.operation().kind() == OperationKind.CUT_OFF)
        .forEach(job -> schedule.placeLast(job, grippedS));
    return schedule;
  }

  /** Time that a first condition takes longer to reach than the index. */
  private double lateS(SpindleState state) {
    return Math.max(0, drum.reachS(state) - machine.indexS());
  }

  private PositionTimeline drumTimeline(int position, PositionSchedule schedule) {
    double endS = schedule.endS();
    double firstChangeS =
        schedule.placed().stream()
            .filter(job -> !job.state().isFree())
            .findFirst()
            .map(job -> lateS(job.state()))
            .orElse(0.0);
    SpindleTrace trace = new SpindleTrace(0);
    List<FixedSpan> fixed = new ArrayList<>();
    double busyS = endS;
    if (schedule.placed().stream().anyMatch(j -> j.operation().kind() == OperationKind.CUT_OFF)) {
      busyS = endS + machine.barFeed().feedOutS();
      fixed.add(new FixedSpan("feed bar to stop", endS, busyS));
    }
    trace.follow(schedule.placed(), drum, firstChangeS, busyS);
    return new PositionTimeline(position, spans(schedule.placed()), trace.spans(), fixed, busyS, 0);
  }

  private Timeline balanced(List<PositionTimeline> drumTimelines, @Nullable PositionTimeline back) {
    PickUp pickUp = machine.pickUp();
    int spindles = pickUp == null ? 1 : pickUp.spindleCount();
    double workS = 0;
    int governing = 1;
    for (PositionTimeline position : drumTimelines) {
      if (position.busyS() > workS) {
        workS = position.busyS();
        governing = position.position();
      }
    }
    if (back != null && back.busyS() / spindles - machine.indexS() > workS) {
      workS = back.busyS() / spindles - machine.indexS();
      governing = back.position();
    }
    double longestS = workS;
    double roundTripS = (workS + machine.indexS()) * spindles;
    return new Timeline(
        drumTimelines.stream().map(p -> withSlack(p, longestS - p.busyS())).toList(),
        back == null ? null : withSlack(back, roundTripS - back.busyS()),
        workS,
        machine.indexS(),
        governing,
        machine.indexing().piecesPerIndexCount());
  }

  private static PositionTimeline withSlack(PositionTimeline p, double slackS) {
    return new PositionTimeline(
        p.position(), p.operations(), p.spindle(), p.fixed(), p.busyS(), slackS);
  }
}
