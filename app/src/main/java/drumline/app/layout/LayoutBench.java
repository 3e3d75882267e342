package drumline.app.layout;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.drawing.strip.WorkpieceHeads;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.PlannedCase;
import drumline.planner.check.TimelineAudit;
import drumline.route.feature.TurnedPart;
import drumline.route.rule.Allowances;
import drumline.shape.proof.RemovalProof;
import drumline.shape.section.PartSection;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceMemory;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.part.Part;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Where layouts of one route on one machine are put on the clock, checked and priced. */
public final class LayoutBench {
  private static final int MOST_PICTURES = 600;

  private final Inquiry inquiry;
  private final Machine machine;
  private final Route route;
  private final GripDiameters diameters;
  private final CycleClock clock;
  private final Part turned;
  private final double partVolumeMm3;
  private final WorkpieceMemory workpieces;
  private final Map<PositionState, String> pictures = new ConcurrentHashMap<>();

  /**
   * A bench.
   *
   * @param route operations, divided ones included
   * @throws IllegalArgumentException if the machine has no drum
   */
  public LayoutBench(Inquiry inquiry, Machine machine, Route route, Allowances allowances) {
    this.inquiry = inquiry;
    this.machine = machine;
    this.route = route;
    this.diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
    this.clock = new CycleClock(route, machine, diameters);
    this.turned = TurnedPart.of(inquiry, allowances);
    this.workpieces = new WorkpieceMemory(inquiry.bar(), turned);
    this.partVolumeMm3 = PartSection.of(inquiry.part(), inquiry.bar()).piece().volumeMm3();
  }

  /** The question. */
  public Inquiry inquiry() {
    return inquiry;
  }

  /** The machine. */
  public Machine machine() {
    return machine;
  }

  /** Operations, divided ones included. */
  public Route route() {
    return route;
  }

  /** The clock. */
  public CycleClock clock() {
    return clock;
  }

  /**
   * The layout with all that follows from it.
   *
   * @throws IllegalArgumentException if a placement names an unknown operation or slide, or a
   *     turning operation has no speed
   */
  public LaidOut lay(Layout layout) {
    Timeline timeline = clock.timeline(layout);
    WorkpieceStates states = workpieces.states(PositionWork.ofLayout(route, machine, layout));
    Optional<MoneyStudy> money = Optional.empty();
    String obstacle = "";
    try {
      money =
          Optional.of(
              MoneyStudy.of(
                  PlannedCase.of(
                      inquiry,
                      machine,
                      route,
                      layout,
                      timeline,
                      partVolumeMm3,
                      Assumptions.usual())));
    } catch (IllegalArgumentException e) {
      obstacle = String.valueOf(e.getMessage());
    }
    return new LaidOut(
        layout,
        timeline,
        TimelineAudit.audit(route, machine, diameters, layout, timeline),
        states,
        money,
        obstacle);
  }

  /** A small drawing of the workpiece as it leaves a position; all of a bar to one scale. */
  public String picture(WorkpieceStates states, PositionState state) {
    if (pictures.size() > MOST_PICTURES) {
      pictures.clear();
    }
    return pictures.computeIfAbsent(state, new WorkpieceHeads(states.bar())::svg);
  }

  /** Whether what the layout removes leaves the part. */
  public RemovalProof proof(WorkpieceStates states) {
    return RemovalProof.of(
        inquiry.bar(), turned, states, RemovalProof.USUAL_IGNORED_UM, pointAngleDeg());
  }

  /** Point angle of the route's drills; a drilled end takes the shape of its drill. */
  private double pointAngleDeg() {
    return route.operations().stream()
        .filter(operation -> operation.kind() == OperationKind.DRILL)
        .mapToDouble(operation -> operation.tool().family().leadAngleDeg())
        .findFirst()
        .orElse(PartSection.USUAL_POINT_ANGLE_DEG);
  }
}
