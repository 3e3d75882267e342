package drumline.shop.layout;

import java.util.List;
import java.util.Optional;

/**
 * The route given places on one machine.
 *
 * @param machineName machine that it is for
 * @param placements one for each operation of the route
 */
public record Layout(String machineName, List<Placement> placements) {

  /** Copies the list. */
  public Layout {
    placements = List.copyOf(placements);
  }

  /** Where the operation stands, if it has a place. */
  public Optional<Placement> findPlacement(String operationId) {
    return placements.stream().filter(p -> p.operationId().equals(operationId)).findFirst();
  }
}
