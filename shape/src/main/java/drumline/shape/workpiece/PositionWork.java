package drumline.shape.workpiece;

import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.Position;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is done to the piece at one position.
 *
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param operations operations in the order of their starts
 */
public record PositionWork(int position, List<Operation> operations) {

  /** Copies the list. */
  public PositionWork {
    operations = List.copyOf(operations);
  }

  /**
   * The layout's work in the order that a piece travels, back-working last; operations without a
   * place are left out.
   */
  public static List<PositionWork> ofLayout(Route route, Machine machine, Layout layout) {
    List<PositionWork> work = new ArrayList<>();
    for (Position position : machine.positions()) {
      work.add(new PositionWork(position.number(), placed(route, layout, position.slides())));
    }
    if (machine.pickUp() != null) {
      work.add(
          new PositionWork(
              machine.lastPosition() + 1, placed(route, layout, machine.pickUp().slides())));
    }
    return work;
  }

  private static List<Operation> placed(Route route, Layout layout, List<ToolSlide> slides) {
    List<String> ids = slides.stream().map(ToolSlide::id).toList();
    return layout.placements().stream()
        .filter(placement -> ids.contains(placement.slideId()))
        .sorted(Comparator.comparingDouble(Placement::plannedStartS))
        .map(placement -> route.findOperation(placement.operationId()))
        .flatMap(Optional::stream)
        .toList();
  }
}
