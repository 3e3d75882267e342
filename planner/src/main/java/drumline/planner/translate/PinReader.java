package drumline.planner.translate;

import drumline.planner.model.Mode;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.Task;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** Reads the places that a user fixes. */
final class PinReader {
  private final Route route;
  private final Machine machine;
  private final List<Pin> wished;

  PinReader(Route route, Machine machine, List<Pin> wished) {
    this.route = route;
    this.machine = machine;
    this.wished = wished;
  }

  /**
   * What was read.
   *
   * @param tasks the tasks, those with a pinned speed left with its modes only
   * @param pins pins of positions and slides
   * @param problems pins that cannot hold
   */
  record Pins(List<Task> tasks, List<drumline.planner.model.Pin> pins, List<Problem> problems) {}

  /** Speeds that must be in the grid. */
  List<Integer> speedsRevPerMin() {
    return wished.stream()
        .filter(pin -> pin.spindleRevPerMin().isPresent())
        .map(pin -> Rounding.revPerMin(pin.spindleRevPerMin().orElse(0)))
        .filter(n -> n > 0)
        .toList();
  }

  Pins pins(List<Task> tasks) {
    List<Task> kept = new ArrayList<>(tasks);
    List<drumline.planner.model.Pin> pins = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Pin pin : wished) {
      if (route.findOperation(pin.operationId()).isEmpty()) {
        problems.add(problem("pin-operation", pin, pin.operationId(), "an operation of the route"));
        continue;
      }
      for (int k = 0; k < kept.size(); k++) {
        if (kept.get(k).id().equals(pin.operationId())) {
          kept.set(k, pinned(kept.get(k), pin, pins, problems));
        }
      }
    }
    return new Pins(kept, pins, problems);
  }

  private Task pinned(
      Task task, Pin pin, List<drumline.planner.model.Pin> pins, List<Problem> problems) {
    int last = machine.lastPosition() + (machine.pickUp() == null ? 0 : 1);
    if (pin.position().isPresent()) {
      int position = pin.position().getAsInt();
      if (position < 1 || position > last) {
        problems.add(problem("pin-position", pin, "position " + position, "1 to " + last));
      } else {
        pins.add(new drumline.planner.model.Pin.ToPosition(task.id(), position));
      }
    }
    if (pin.notPosition().isPresent()) {
      int position = pin.notPosition().getAsInt();
      if (position < 1 || position > last) {
        problems.add(problem("pin-position", pin, "position " + position, "1 to " + last));
      } else {
        pins.add(new drumline.planner.model.Pin.NotInPosition(task.id(), position));
      }
    }
    if (!pin.slideId().isEmpty()) {
      if (task.slideIds().contains(pin.slideId())) {
        pins.add(new drumline.planner.model.Pin.ToSlide(task.id(), pin.slideId()));
      } else {
        problems.add(
            problem(
                "pin-slide",
                pin,
                "slide " + pin.slideId(),
                "one of " + String.join(", ", task.slideIds())));
      }
    }
    return pin.spindleRevPerMin().isPresent()
        ? atSpeed(task, pin, Rounding.revPerMin(pin.spindleRevPerMin().getAsDouble()), problems)
        : task;
  }

  private static Task atSpeed(Task task, Pin pin, int n, List<Problem> problems) {
    List<Mode> modes =
        task.modes().stream()
            .filter(m -> m.condition() == SpindleCondition.TURNING && m.revPerMin() == n)
            .toList();
    if (modes.isEmpty()) {
      List<Integer> speeds = task.modes().stream().map(Mode::revPerMin).sorted().toList();
      problems.add(
          problem(
              "pin-speed",
              pin,
              n + " rev/min",
              speeds.get(speeds.size() - 1) == 0
                  ? "no speed: the spindle stands"
                  : "up to "
                      + speeds.get(speeds.size() - 1)
                      + " rev/min, down to the operation's lowest"));
      return task;
    }
    return task.withModes(modes);
  }

  private static Problem problem(String code, Pin pin, String found, String allowed) {
    return Problem.error(
        code,
        "pin of operation " + pin.operationId(),
        found,
        allowed,
        "Maybe the pin was made for another machine or route.");
  }
}
