package drumline.app.replan;

import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.planner.api.Cancel;
import drumline.planner.api.PlannerSettings;
import drumline.route.divide.RouteDivision;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What would shorten a layout's cycle most: each change is planned again with the same effort as
 * the unchanged route, so that the difference is the change's. Known limit: one change at a time.
 */
public final class Shortenings {
  /** A better tool material is counted on to cut so much faster; from memory. */
  private static final double FASTER_RATIO = 1.25;

  private static final int MOST_PARTS = 3;
  private static final double LEAST_GAIN_S = 0.02;

  private final MachineStudy study;
  private final PlannedLayout plan;
  private final PlannerSettings each;
  private final Cancel cancel;

  private Shortenings(MachineStudy study, PlannedLayout plan, PlannerSettings each, Cancel cancel) {
    this.study = study;
    this.plan = plan;
    this.each = each;
    this.cancel = cancel;
  }

  private record Change(String words, Route route, Machine machine) {}

  /**
   * Changes that gain something, the greatest first; none for a study without a layout.
   *
   * @param each effort for each change
   */
  public static List<Shortening> of(MachineStudy study, PlannerSettings each, Cancel cancel) {
    Optional<PlannedLayout> plan = study.plan();
    return plan.isEmpty() ? List.of() : new Shortenings(study, plan.get(), each, cancel).found();
  }

  private List<Shortening> found() {
    List<Shortening> found = new ArrayList<>();
    QuickPlan now = planned(study.route(), study.machine());
    double cycleS = now.isFeasible() ? Math.min(now.cycleS(), plan.timeline().cycleS()) : 0;
    for (Change change : changes()) {
      if (cancel.isCancelled()) {
        break;
      }
      QuickPlan then = planned(change.route(), change.machine());
      double gainS = cycleS - then.cycleS();
      if (then.isFeasible() && gainS >= LEAST_GAIN_S) {
        found.add(new Shortening(change.words(), gainS));
      }
    }
    found.sort(Comparator.comparingDouble(Shortening::gainS).reversed());
    return found;
  }

  private QuickPlan planned(Route route, Machine machine) {
    return QuickPlan.of(
        study.inquiry(), machine, route, study.inquiry().wishes().pins(), each, cancel);
  }

  private List<Change> changes() {
    List<Change> changes = new ArrayList<>();
    for (OperationSpan span : governing().operations()) {
      Operation operation = study.route().operation(span.operationId());
      for (int parts = 2; parts <= MOST_PARTS; parts++) {
        if (RouteDivision.canDivide(operation, parts)) {
          changes.add(
              new Change(
                  "divide " + operation.id() + " in " + parts + " parts",
                  RouteDivision.divide(study.route(), operation.id(), parts),
                  study.machine()));
        }
      }
      changes.add(
          new Change(
              String.format(
                  Locale.ROOT,
                  "a tool material that cuts %s %.0f %% faster",
                  operation.id(),
                  100 * (FASTER_RATIO - 1)),
              with(study.route(), faster(operation)),
              study.machine()));
    }
    addSecondPickUp(changes);
    addLiveTools(changes);
    return changes;
  }

  private PositionTimeline governing() {
    int position = plan.timeline().governing();
    PositionTimeline back = plan.timeline().back();
    return position > study.machine().lastPosition() && back != null
        ? back
        : plan.timeline().positions().get(Math.min(position, study.machine().lastPosition()) - 1);
  }

  private static Route with(Route route, Operation changed) {
    return new Route(
        route.operations().stream().map(o -> o.id().equals(changed.id()) ? changed : o).toList(),
        route.orders(),
        route.pairs(),
        route.problems());
  }

  private static Operation faster(Operation operation) {
    CutSpec cut = operation.cut();
    CutSpec quick =
        cut.toolRevPerMin() > 0
            ? drivenFaster(cut)
            : cut.withHighest(cut.highestRevPerMin() * FASTER_RATIO, "a faster tool material");
    return operation.withCut(operation.id(), operation.title(), quick);
  }

  private static CutSpec drivenFaster(CutSpec cut) {
    return cut.withToolSpeed(cut.toolRevPerMin() * FASTER_RATIO);
  }

  private void addSecondPickUp(List<Change> changes) {
    Machine machine = study.machine();
    PickUp pickUp = machine.pickUp();
    if (pickUp != null && pickUp.spindleCount() == 1) {
      changes.add(
          new Change(
              "a second pick-up spindle",
              study.route(),
              machine.withPickUp(pickUp.withSpindleCount(2))));
    }
  }

  /** A live tool on each slide that cannot have one yet. */
  private void addLiveTools(List<Change> changes) {
    boolean wanted =
        study.route().operations().stream()
            .anyMatch(o -> o.equipment().contains(Equipment.LIVE_TOOL));
    for (Position position : study.machine().positions()) {
      for (ToolSlide slide : position.slides()) {
        if (wanted && !slide.canHave(Equipment.LIVE_TOOL)) {
          changes.add(
              new Change("a live tool on " + slide.id(), study.route(), withLiveTool(slide.id())));
        }
      }
    }
  }

  private Machine withLiveTool(String slideId) {
    Machine machine = study.machine();
    return machine.withPositions(
        machine.positions().stream()
            .map(
                p ->
                    new Position(
                        p.number(),
                        p.slides().stream()
                            .map(s -> s.id().equals(slideId) ? driven(s) : s)
                            .toList()))
            .toList());
  }

  private static ToolSlide driven(ToolSlide slide) {
    Map<Equipment, Fitting> equipment = new HashMap<>(slide.equipment());
    equipment.put(Equipment.LIVE_TOOL, Fitting.OPTION);
    return slide.withEquipment(equipment);
  }
}
