package drumline.planner.translate;

import drumline.cycle.clock.OperationTime;
import drumline.shop.machine.Axis;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Which slides of a machine can take an operation, and what stands against the others. */
final class SlideFit {
  private static final Set<OperationKind> ALONG_THE_WORK =
      EnumSet.of(
          OperationKind.ROUGH_TURN,
          OperationKind.FINISH_TURN,
          OperationKind.BURNISH,
          OperationKind.THREAD_TURN,
          OperationKind.MILL_SLOT,
          OperationKind.ENGRAVE,
          OperationKind.INSIDE_GROOVE);
  private static final Set<OperationKind> ACROSS_THE_WORK =
      EnumSet.of(OperationKind.THREAD_TURN, OperationKind.INSIDE_GROOVE, OperationKind.FACE);

  private final Machine machine;

  SlideFit(Machine machine) {
    this.machine = machine;
  }

  /** Slides at the drum that can take the operation, in the order of the positions. */
  List<ToolSlide> drumSlides(Operation operation) {
    if (operation.end() == WorkEnd.BACK) {
      return List.of();
    }
    List<ToolSlide> fit = new ArrayList<>();
    for (Position position : machine.positions()) {
      boolean isAllowed =
          operation.kind() != OperationKind.CUT_OFF || position.number() == machine.lastPosition();
      for (ToolSlide slide : position.slides()) {
        if (isAllowed && findObstacle(operation, slide).isEmpty()) {
          fit.add(slide);
        }
      }
    }
    return fit;
  }

  /** Slides at the pick-up spindle that can take the operation. */
  List<ToolSlide> backSlides(Operation operation) {
    PickUp pickUp = machine.pickUp();
    if (pickUp == null || operation.end() == WorkEnd.FRONT) {
      return List.of();
    }
    return pickUp.slides().stream()
        .filter(slide -> findObstacle(operation, slide).isEmpty())
        .toList();
  }

  /** Says why no slide takes the operation. */
  Problem problem(Operation operation) {
    Set<String> obstacles = new TreeSet<>();
    if (operation.end() != WorkEnd.BACK) {
      machine.drumSlides().forEach(slide -> obstacles.add(findObstacle(operation, slide)));
    }
    PickUp pickUp = machine.pickUp();
    if (operation.end() != WorkEnd.FRONT && pickUp != null) {
      pickUp.slides().forEach(slide -> obstacles.add(findObstacle(operation, slide)));
    }
    obstacles.remove("");
    if (operation.kind() == OperationKind.CUT_OFF) {
      obstacles.add("only the last position parts pieces");
    }
    boolean isBack = operation.end() == WorkEnd.BACK;
    return Problem.error(
        isBack && pickUp == null ? "no-back-working" : "no-slide",
        "operation " + operation.id(),
        operation.title()
            + " finds no slide on "
            + machine.name()
            + (obstacles.isEmpty() ? "" : ": " + String.join("; ", obstacles)),
        isBack && pickUp == null ? "a machine with a pick-up spindle" : wanted(operation),
        "Maybe another machine, or less feed or depth of cut.");
  }

  private static String wanted(Operation operation) {
    Set<String> sides = new TreeSet<>();
    operation.slides().forEach(kind -> sides.add(word(kind)));
    Set<String> equipment = new TreeSet<>();
    operation.equipment().forEach(kind -> equipment.add(word(kind)));
    return "a slide of kind "
        + String.join(" or ", sides)
        + (equipment.isEmpty() ? "" : " with " + String.join(" and ", equipment))
        + " and a feed force of "
        + Math.round(operation.loads().feedForceN())
        + " N";
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String mm(double wayMm) {
    return String.format(Locale.ROOT, "%.1f mm", wayMm);
  }

  /** What keeps an operation from a slide, or an empty text. */
  private static String findObstacle(Operation operation, ToolSlide slide) {
    if (slide.kind() != SlideKind.BACK && !operation.slides().contains(slide.kind())) {
      return word(slide.kind()) + " slides work from the wrong side";
    }
    for (Equipment equipment : operation.equipment()) {
      if (!slide.canHave(equipment)) {
        return slide.id() + " cannot have " + word(equipment);
      }
    }
    if (slide.kind() != SlideKind.BACK
        && !slide.axes().containsAll(axes(operation, slide.kind()))) {
      return slide.id() + " lacks an axis: needs " + axisNames(operation, slide.kind());
    }
    double wayMm = OperationTime.retractMm(operation);
    if (wayMm > slide.strokeMm()) {
      return slide.id() + " has a stroke of " + mm(slide.strokeMm()) + " for " + mm(wayMm);
    }
    if (operation.loads().feedForceN() > slide.thrustN()) {
      return slide.id() + " pushes with " + Math.round(slide.thrustN()) + " N at most";
    }
    return "";
  }

  private static String axisNames(Operation operation, SlideKind kind) {
    return axes(operation, kind).stream()
        .map(Axis::name)
        .collect(java.util.stream.Collectors.joining(" and "));
  }

  private static Set<Axis> axes(Operation operation, SlideKind kind) {
    Set<Axis> axes = EnumSet.of(kind == SlideKind.END ? Axis.Z : Axis.X);
    if (kind == SlideKind.CROSS && ALONG_THE_WORK.contains(operation.kind())) {
      axes.add(Axis.Z);
    }
    if (kind == SlideKind.END && ACROSS_THE_WORK.contains(operation.kind())) {
      axes.add(Axis.X);
    }
    return axes;
  }
}
