package drumline.step.solid;

import drumline.step.space.Vec;
import java.util.List;

/**
 * A bound of a face, its points in order with the face to the left, seen from outside.
 *
 * @param points closed, the first not repeated; a single point for a tip
 */
public record Loop(List<Vec> points) {

  /** Copies the list. */
  public Loop {
    points = List.copyOf(points);
  }
}
