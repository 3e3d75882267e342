package drumline.economics.triage;

import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.ToolSlide;
import java.util.stream.Stream;

/** Counts a machine's tool seats. */
final class Seats {
  private Seats() {}

  static int atDrum(Machine machine) {
    return machine.drumSlides().mapToInt(ToolSlide::seatCount).sum();
  }

  static int atPickUp(Machine machine) {
    return backSlides(machine).mapToInt(ToolSlide::seatCount).sum();
  }

  static int fitted(Machine machine, Equipment equipment) {
    return slides(machine)
        .filter(slide -> slide.equipment().get(equipment) == Fitting.FITTED)
        .mapToInt(ToolSlide::seatCount)
        .sum();
  }

  static int withOptions(Machine machine, Equipment equipment) {
    return slides(machine)
        .filter(slide -> slide.canHave(equipment))
        .mapToInt(ToolSlide::seatCount)
        .sum();
  }

  private static Stream<ToolSlide> slides(Machine machine) {
    return Stream.concat(machine.drumSlides(), backSlides(machine));
  }

  private static Stream<ToolSlide> backSlides(Machine machine) {
    PickUp pickUp = machine.pickUp();
    return pickUp == null ? Stream.empty() : pickUp.slides().stream();
  }
}
