package drumline.planner.check;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks every rule of the shop again on a finished timeline.
 *
 * <p>Source: [BASIS] sections 2.1, 6 and 7.1 for times, grip and cycle; [OPTIMUM] on EN 1550 for
 * the grip that speed may take. A passed audit says that the layout keeps the rules of this model;
 * the machine maker's limits, local codes and the judgement of qualified staff stand above it.
 */
public final class TimelineAudit {
  private TimelineAudit() {}

  /** The report on a layout and its timeline. */
  public static TimelineReport audit(
      Route route, Machine machine, GripDiameters diameters, Layout layout, Timeline timeline) {
    List<Spot> spots = new ArrayList<>();
    List<String> broken = collect(route, machine, layout, timeline, spots);
    Finding complete = Finding.of("every-operation-once", spots.size() + " operations", broken);
    if (!complete.isPassed()) {
      return new TimelineReport(List.of(complete));
    }
    Floor floor = new Floor(route, machine, diameters, timeline, spots);
    List<Finding> findings = new ArrayList<>();
    findings.add(complete);
    findings.addAll(new PlaceChecks(floor).findings());
    findings.addAll(new SpindleChecks(floor).findings());
    findings.addAll(new TimeChecks(floor).findings());
    findings.addAll(new LoadChecks(floor).findings());
    findings.addAll(new CycleChecks(floor).findings());
    return new TimelineReport(findings);
  }

  private static List<String> collect(
      Route route, Machine machine, Layout layout, Timeline timeline, List<Spot> spots) {
    List<String> broken = new ArrayList<>();
    Map<String, Integer> positionBySlide = positionBySlide(machine);
    List<PositionTimeline> all = new ArrayList<>(timeline.positions());
    PositionTimeline back = timeline.back();
    if (back != null) {
      all.add(back);
    }
    for (Operation operation : route.operations()) {
      String id = operation.id();
      List<Placement> placements =
          layout.placements().stream().filter(p -> p.operationId().equals(id)).toList();
      List<Spot> found = new ArrayList<>();
      for (PositionTimeline position : all) {
        for (OperationSpan span : position.operations()) {
          Optional<ToolSlide> slide = machine.findSlide(span.slideId());
          if (span.operationId().equals(id) && slide.isPresent()) {
            found.add(new Spot(operation, slide.get(), position.position(), span));
          }
        }
      }
      if (placements.size() != 1 || found.size() != 1) {
        broken.add(
            id + " has " + placements.size() + " places and is done " + found.size() + " times");
      } else {
        differences(placements.get(0), found.get(0), positionBySlide).ifPresent(broken::add);
        spots.addAll(found);
      }
    }
    int spanCount = all.stream().mapToInt(position -> position.operations().size()).sum();
    if (broken.isEmpty() && spanCount != route.operations().size()) {
      broken.add(spanCount + " times are given for " + route.operations().size() + " operations");
    }
    return broken;
  }

  private static Optional<String> differences(
      Placement placement, Spot spot, Map<String, Integer> positionBySlide) {
    boolean isSame =
        placement.slideId().equals(spot.slide().id())
            && positionBySlide.getOrDefault(placement.slideId(), 0) == spot.position()
            && (!spot.turns() || placement.spindleRevPerMin() == spot.span().spindleRevPerMin());
    return isSame
        ? Optional.empty()
        : Optional.of(spot.words() + " is not done as placed: " + placement);
  }

  private static Map<String, Integer> positionBySlide(Machine machine) {
    Map<String, Integer> positions = new HashMap<>();
    machine
        .positions()
        .forEach(p -> p.slides().forEach(slide -> positions.put(slide.id(), p.number())));
    PickUp pickUp = machine.pickUp();
    if (pickUp != null) {
      int last = machine.positions().size() + 1;
      pickUp.slides().forEach(slide -> positions.put(slide.id(), last));
    }
    return positions;
  }
}
