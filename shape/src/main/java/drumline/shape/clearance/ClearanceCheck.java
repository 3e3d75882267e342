package drumline.shape.clearance;

import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shape.setting.Holding;
import drumline.shape.setting.PositionTools;
import drumline.shape.setting.SetTool;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.Removal;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.machine.Machine;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Whether any tool meets the work, the collet's nose, the pick-up jaws, or a tool of another slide
 * that is out at the same time.
 *
 * <p>Tools go their straight ways at even speed between the times of their timeline and are looked
 * at in 16 steps of each approach, cut and retract. Known limits: outlines are usual forms in the
 * section plane; tools of the second cross slide come from the far side, all others from this one;
 * tools beside them on the same slide and the slides' own bodies are not looked at; what is thinner
 * than a step between two looks can slip through. It finds faults of a layout; it does not prove a
 * machine safe to start.
 */
public final class ClearanceCheck {

  private static final double JAWS_COME_MM = 60;

  private final Part part;
  private final Bar bar;
  private final Machine machine;
  private final WorkpieceStates states;
  private final HalfSection piece;

  private ClearanceCheck(
      Part part, Bar bar, Machine machine, WorkpieceStates states, double pointAngleDeg) {
    this.part = part;
    this.bar = bar;
    this.machine = machine;
    this.states = states;
    this.piece = PartSection.of(part, bar, pointAngleDeg).piece();
  }

  /**
   * Looks at all positions.
   *
   * @param part the piece as turning leaves it
   * @param tools tools of each position, in the order of travel
   * @param pointAngleDeg point angle of the drills that end bores
   */
  public static ClearanceReport of(
      Part part,
      Bar bar,
      Machine machine,
      WorkpieceStates states,
      List<PositionTools> tools,
      double pointAngleDeg) {
    ClearanceCheck check = new ClearanceCheck(part, bar, machine, states, pointAngleDeg);
    List<Meeting> meetings = new ArrayList<>();
    int pairCount = 0;
    HalfSection arrives = states.bar();
    for (PositionTools position : tools) {
      PositionClearance clearance = check.position(position, arrives);
      meetings.addAll(clearance.meetings());
      pairCount += clearance.pairCount();
      arrives = check.leaves(position.position(), arrives);
    }
    meetings.sort(Comparator.comparingInt(Meeting::position).thenComparingDouble(Meeting::atS));
    return new ClearanceReport(meetings, pairCount);
  }

  private HalfSection leaves(int position, HalfSection arrives) {
    return states.findPosition(position).map(PositionState::workpiece).orElse(arrives);
  }

  private PositionClearance position(PositionTools tools, HalfSection arrives) {
    PositionClearance clearance = new PositionClearance(tools);
    List<Removal> removals =
        states.findPosition(tools.position()).map(PositionState::removals).orElse(List.of());
    clearance.work(arrives, removals);
    clearance.piece(piece);
    boolean isBack = tools.position() > machine.lastPosition();
    if (!isBack) {
      PlaneArea nose = PlaneArea.of(Holding.colletNose(bar, states.cutOffToZMm()));
      clearance.holding(atS -> Optional.of(nose), "the collet's nose");
    }
    Holding.jaws(part)
        .map(PlaneArea::of)
        .ifPresent(jaws -> jaws(clearance, tools, jaws, isBack ? Stand.GRIPPED : Stand.COMES));
    clearance.eachOther();
    return clearance;
  }

  /** Whether the jaws hold the piece all the time or come for it. */
  private enum Stand {
    GRIPPED,
    COMES
  }

  private void jaws(PositionClearance clearance, PositionTools tools, PlaneArea jaws, Stand stand) {
    if (stand == Stand.GRIPPED) {
      clearance.holding(atS -> Optional.of(jaws), "the pick-up jaws");
      return;
    }
    Optional<SetTool> cutOff =
        tools.tools().stream()
            .filter(tool -> tool.operation().kind() == OperationKind.CUT_OFF)
            .findFirst();
    if (cutOff.isPresent() && machine.pickUp() != null) {
      double gripS = machine.pickUp().gripS();
      clearance.holding(coming(jaws, cutOff.get(), gripS), "the pick-up jaws");
    }
  }

  /** Jaws that come forward while gripping time runs and stay until the piece is parted. */
  private static DoubleFunction<Optional<PlaneArea>> coming(
      PlaneArea jaws, SetTool cutOff, double gripS) {
    double holdsS = cutOff.times().startS();
    double comesS = holdsS - gripS;
    return atS -> {
      if (atS < comesS || atS > cutOff.times().clearS()) {
        return Optional.empty();
      }
      double left = gripS > 0 ? Math.max(0, (holdsS - atS) / gripS) : 0;
      return Optional.of(jaws.movedAlong(-left * JAWS_COME_MM));
    };
  }
}
