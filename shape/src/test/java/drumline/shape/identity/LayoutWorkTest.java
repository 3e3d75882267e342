package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shape.Prints;
import drumline.shape.workpiece.PositionWork;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.machine.Workholding;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Work follows the travel of the piece, and at one position the starts. */
class LayoutWorkTest {

  private static ToolSlide slide(String id, SlideKind kind) {
    return new ToolSlide(id, kind, Set.of(), 80, 20, 5, 6000, 2, 0.3, Map.of());
  }

  private static Machine machine() {
    return new Machine(
        "two",
        "two positions",
        Machine.Kind.DRUM,
        List.of(
            new Position(
                1, List.of(slide("1-cross", SlideKind.CROSS), slide("1-end", SlideKind.END))),
            new Position(2, List.of(slide("2-cross", SlideKind.CROSS)))),
        new SpindleDrive(SpindleDrive.Coupling.COMMON, 100, 4000, 9, 40, 3000, 0.4, 0),
        new Workholding(20000, 0.2, 0.5, 20, 2),
        new PickUp(
            1,
            4000,
            5,
            20,
            15000,
            0.5,
            0.4,
            0.4,
            0.3,
            3000,
            0.4,
            List.of(slide("back", SlideKind.BACK))),
        new BarFeed(40, 3000, 100, 0.8, 15, BarFeed.Loading.IN_SHADOW),
        0.8,
        80,
        new MachineCost("EUR", BigDecimal.TEN, Map.of(), BigDecimal.TEN, 4, 2, 85),
        "invented");
  }

  @Test
  void operationsComeInTheOrderOfTravelAndStart() {
    List<Operation> operations =
        Stream.of("a", "b", "c", "d", "e")
            .map(id -> Prints.operation(id, OperationKind.ROUGH_TURN))
            .toList();
    Layout layout =
        new Layout(
            "two",
            List.of(
                new Placement("d", "back", 2000, 1.5),
                new Placement("c", "2-cross", 2000, 0.2),
                new Placement("b", "1-end", 2000, 2.0),
                new Placement("a", "1-cross", 2000, 0.5)));
    List<PositionWork> work =
        PositionWork.ofLayout(
            new Route(operations, List.of(), List.of(), List.of()), machine(), layout);
    assertThat(work).extracting(PositionWork::position).containsExactly(1, 2, 3);
    assertThat(work)
        .extracting(p -> p.operations().stream().map(Operation::id).toList())
        .containsExactly(List.of("a", "b"), List.of("c"), List.of("d"));
  }
}
