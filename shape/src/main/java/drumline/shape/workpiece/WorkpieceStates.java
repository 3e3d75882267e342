package drumline.shape.workpiece;

import drumline.shape.section.HalfSection;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
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
    return new WorkpieceMemory(bar, part).states(work);
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
    return bar.toZMm() - WorkpieceMemory.STUB_MM;
  }

  /** The workpiece after the last position. */
  public HalfSection last() {
    return positions.isEmpty() ? bar : positions.get(positions.size() - 1).workpiece();
  }
}
