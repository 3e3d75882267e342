package drumline.app.layout;

import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.WorkEnd;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The slides of a machine by position, and which suit an operation. */
public final class SlideChoice {
  private final Machine machine;
  private final Map<String, Integer> positions = new LinkedHashMap<>();

  /** The slides of a machine; the pick-up spindle's position is one more than the last. */
  public SlideChoice(Machine machine) {
    this.machine = machine;
    for (Position position : machine.positions()) {
      position.slides().forEach(slide -> positions.put(slide.id(), position.number()));
    }
    PickUp pickUp = machine.pickUp();
    if (pickUp != null) {
      pickUp.slides().forEach(slide -> positions.put(slide.id(), machine.lastPosition() + 1));
    }
  }

  /** Position of a slide; 0 where the machine has none of this name. */
  public int position(String slideId) {
    return positions.getOrDefault(slideId, 0);
  }

  /**
   * The slide of this name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public ToolSlide slide(String slideId) {
    return machine
        .findSlide(slideId)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "slideId: " + slideId + ", allowed: " + String.join(", ", positions.keySet())));
  }

  /**
   * The first slide of a position that suits the operation by end, side and equipment, else the
   * first.
   *
   * @throws IllegalArgumentException if there is no such position, or it has no slide
   */
  public ToolSlide first(Operation operation, int position) {
    List<ToolSlide> there = at(position);
    return there.stream()
        .filter(slide -> suits(operation, slide))
        .findFirst()
        .or(() -> there.stream().findFirst())
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "position: " + position + ", allowed: one with a slide of " + positions));
  }

  /** Slides that suit the operation by end, side and equipment, in the order of travel. */
  public List<ToolSlide> all(Operation operation) {
    List<ToolSlide> all = new ArrayList<>();
    for (String id : positions.keySet()) {
      machine.findSlide(id).filter(slide -> suits(operation, slide)).ifPresent(all::add);
    }
    return all;
  }

  /** Slides of a position, in the machine's order. */
  public List<ToolSlide> at(int position) {
    PickUp pickUp = machine.pickUp();
    if (position == machine.lastPosition() + 1 && pickUp != null) {
      return pickUp.slides();
    }
    return machine.positions().stream()
        .filter(p -> p.number() == position)
        .flatMap(p -> p.slides().stream())
        .toList();
  }

  private static boolean suits(Operation operation, ToolSlide slide) {
    boolean isBack = slide.kind() == SlideKind.BACK;
    boolean endFits = isBack ? operation.end() != WorkEnd.FRONT : operation.end() != WorkEnd.BACK;
    return endFits
        && (isBack || operation.slides().contains(slide.kind()))
        && operation.equipment().stream().allMatch(slide::canHave);
  }
}
