package drumline.shape.workpiece;

import drumline.shape.section.BarSection;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The workpiece from bar to piece, position by position.
 *
 * <p>Known limits: operations of one position are taken one after the other by their starts, so
 * where two sweep the same place at the same time the first gets it all; features that are not
 * turned leave the half-section as it is.
 *
 * @param bar the front of the bar before the first position
 * @param positions states in the order of travel
 */
public record WorkpieceStates(HalfSection bar, List<PositionState> positions) {

  /** Length of bar in mm that is shown behind the last cut. */
  private static final double STUB_MM = 3;

  /** Copies the list. */
  public WorkpieceStates {
    positions = List.copyOf(positions);
  }

  /**
   * Follows a piece through its positions.
   *
   * @param work work in the order of travel
   */
  public static WorkpieceStates of(Bar bar, Part part, List<PositionWork> work) {
    HalfSection start = front(bar, part, work);
    List<PositionState> states = new ArrayList<>();
    HalfSection now = start;
    Hold hold = Hold.IN_BAR;
    for (PositionWork position : work) {
      HalfSection removedHere = HalfSection.EMPTY;
      List<Removal> removals = new ArrayList<>();
      for (Operation operation : position.operations()) {
        HalfSection swept = HalfSection.ofAll(operation.removes());
        HalfSection removed = now.intersect(swept);
        removals.add(new Removal(operation.id(), swept, removed));
        removedHere = removedHere.union(removed);
        now = now.subtract(swept);
        if (operation.kind() == OperationKind.CUT_OFF && isParted(now, part)) {
          hold = Hold.PARTED;
          now = piece(now, part);
        }
      }
      states.add(new PositionState(position.position(), now, removedHere, removals, hold));
    }
    return new WorkpieceStates(start, states);
  }

  /** The state as the workpiece leaves this position, if it passes there. */
  public Optional<PositionState> findPosition(int position) {
    return positions.stream().filter(state -> state.position() == position).findFirst();
  }

  /** What one operation took, if it has a place. */
  public Optional<Removal> findRemoval(String operationId) {
    return positions.stream()
        .flatMap(state -> state.removals().stream())
        .filter(removal -> removal.operationId().equals(operationId))
        .findFirst();
  }

  /** Collet side of the cut-off in mm from the front face. */
  public double cutOffToZMm() {
    return bar.toZMm() - STUB_MM;
  }

  /** The workpiece after the last position. */
  public HalfSection last() {
    return positions.isEmpty() ? bar : positions.get(positions.size() - 1).workpiece();
  }

  private static HalfSection front(Bar bar, Part part, List<PositionWork> work) {
    double fromZMm = 0;
    double toZMm = part.lengthMm();
    for (PositionWork position : work) {
      for (Operation operation : position.operations()) {
        for (CutRegion region : operation.removes()) {
          for (PointZr point : region.outline()) {
            if (operation.kind() == OperationKind.FACE) {
              fromZMm = Math.min(fromZMm, point.zMm());
            }
            if (operation.kind() == OperationKind.CUT_OFF) {
              toZMm = Math.max(toZMm, point.zMm());
            }
          }
        }
      }
    }
    return BarSection.of(bar, fromZMm, toZMm + STUB_MM);
  }

  private static boolean isParted(HalfSection now, Part part) {
    return now.bodies().stream().noneMatch(body -> spans(body, part));
  }

  private static boolean spans(HalfSection body, Part part) {
    return body.fromZMm() < part.lengthMm() / 2 && body.toZMm() > part.lengthMm() + STUB_MM / 2;
  }

  private static HalfSection piece(HalfSection now, Part part) {
    HalfSection piece = HalfSection.EMPTY;
    for (HalfSection body : now.bodies()) {
      if (body.fromZMm() < part.lengthMm()) {
        piece = piece.union(body);
      }
    }
    return piece;
  }
}
