package drumline.planner.translate;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.WorkSpindle;
import drumline.planner.model.Mode;
import drumline.planner.model.Task;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Operations as tasks: where each can stand, and in which modes. */
final class TaskList {
  private final Machine machine;
  private final SlideFit fit;
  private final WorkSpindle drum;
  private final @Nullable WorkSpindle pickUp;
  private final Map<String, SpeedWindow> drumWindows = new HashMap<>();
  private final Map<String, SpeedWindow> backWindows = new HashMap<>();
  private final List<Task> tasks = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  TaskList(Route route, Machine machine, GripDiameters diameters, List<Integer> pinnedRevPerMin) {
    this.machine = machine;
    fit = new SlideFit(machine);
    drum = WorkSpindle.ofDrum(machine, diameters);
    pickUp = machine.pickUp() == null ? null : WorkSpindle.ofPickUp(machine, diameters);
    List<Operation> operations = route.operations();
    operations.forEach(this::addWindows);
    TaskModes atDrum =
        modes(
            operations,
            drum,
            Mode.End.DRUM,
            drumWindows,
            with(pinnedRevPerMin, machine.indexS() * drum.runUpRevPerMinPerS()));
    TaskModes atBack =
        pickUp == null
            ? atDrum
            : modes(
                operations,
                pickUp,
                Mode.End.BACK,
                backWindows,
                with(pinnedRevPerMin, retractS() * pickUp.runUpRevPerMinPerS()));
    operations.forEach(operation -> addTask(operation, atDrum, atBack));
    if (machine.drive().coupling() == SpindleDrive.Coupling.COMMON) {
      List<Operation> onlyAtDrum =
          operations.stream().filter(operation -> fit.backSlides(operation).isEmpty()).toList();
      SpeedProblems.findNoCommonSpeed(onlyAtDrum, drumWindows, machine).ifPresent(problems::add);
    }
  }

  List<Task> tasks() {
    return tasks;
  }

  List<Problem> problems() {
    return problems;
  }

  List<String> notes() {
    return notes;
  }

  /** Speeds at the drum of operations that turn, by id. */
  Map<String, SpeedWindow> drumWindows() {
    return drumWindows;
  }

  /** Wanted speeds with the fastest one that is reached without waiting. */
  private static List<Integer> with(List<Integer> wanted, double reachedRevPerMin) {
    List<Integer> all = new ArrayList<>(wanted);
    if (reachedRevPerMin >= 1 && reachedRevPerMin < Integer.MAX_VALUE) {
      all.add(Rounding.revPerMin(reachedRevPerMin));
    }
    return all;
  }

  private double retractS() {
    PickUp carrier = machine.pickUp();
    return carrier == null ? 0 : carrier.retractS();
  }

  private void addWindows(Operation operation) {
    if (isTurning(operation)) {
      SpeedWindow.find(operation, drum)
          .flatMap(window -> matched(operation, window))
          .ifPresent(window -> drumWindows.put(operation.id(), window));
      if (pickUp != null) {
        SpeedWindow.find(operation, pickUp)
            .ifPresent(window -> backWindows.put(operation.id(), window));
      }
    }
  }

  /** The pick-up spindle turns with the cut-off. */
  private Optional<SpeedWindow> matched(Operation operation, SpeedWindow window) {
    PickUp matching = machine.pickUp();
    if (operation.kind() != OperationKind.CUT_OFF
        || matching == null
        || matching.highestRevPerMin() >= window.highestRevPerMin()) {
      return Optional.of(window);
    }
    return matching.highestRevPerMin() < window.lowestRevPerMin()
        ? Optional.empty()
        : Optional.of(
            new SpeedWindow(
                window.lowestRevPerMin(),
                matching.highestRevPerMin(),
                "pick-up spindle's fastest speed"));
  }

  private static boolean isTurning(Operation operation) {
    return operation.condition() == SpindleCondition.TURNING
        || operation.condition() == SpindleCondition.TURNING_ANY;
  }

  private TaskModes modes(
      List<Operation> operations,
      WorkSpindle spindle,
      Mode.End end,
      Map<String, SpeedWindow> windows,
      List<Integer> wantedRevPerMin) {
    List<SpeedWindow> used = new ArrayList<>();
    List<Integer> slower = new ArrayList<>();
    for (Operation operation : operations) {
      SpeedWindow window = windows.get(operation.id());
      if (operation.condition() == SpindleCondition.TURNING
          && window != null
          && !slides(operation, end).isEmpty()) {
        used.add(window);
        if (ShortCut.pays(operation, window, spindle)) {
          double turnsCount = operation.cut().revolutionsCount();
          slower.add(Rounding.revPerMin(ShortCut.speedRevPerMin(turnsCount, spindle)));
        }
      }
    }
    SpeedGrid grid = SpeedGrid.of(used, wantedRevPerMin, slower);
    if (grid.isMerged()) {
      notes.add(
          "Near-equal speeds were merged for planning; the bound holds for the speeds that were"
              + " left, and the speeds were raised again afterwards where that shortens the cycle.");
    }
    return new TaskModes(spindle, end, grid);
  }

  private List<ToolSlide> slides(Operation operation, Mode.End end) {
    return end == Mode.End.DRUM ? fit.drumSlides(operation) : fit.backSlides(operation);
  }

  private void addTask(Operation operation, TaskModes atDrum, TaskModes atBack) {
    List<ToolSlide> drumSlides = fit.drumSlides(operation);
    List<ToolSlide> backSlides = fit.backSlides(operation);
    if (drumSlides.isEmpty() && backSlides.isEmpty()) {
      problems.add(fit.problem(operation));
      return;
    }
    List<Mode> drumModes = findModes(operation, drumSlides, atDrum, drumWindows);
    List<Mode> backModes = findModes(operation, backSlides, atBack, backWindows);
    List<Mode> modes = Stream.of(drumModes, backModes).flatMap(Collection::stream).toList();
    if (modes.isEmpty()) {
      problems.add(SpeedProblems.noSpeed(operation, machine));
      return;
    }
    Stream<ToolSlide> used =
        Stream.concat(
            drumModes.isEmpty() ? Stream.empty() : drumSlides.stream(),
            backModes.isEmpty() ? Stream.empty() : backSlides.stream());
    tasks.add(new Task(operation.id(), operation.title(), used.map(ToolSlide::id).toList(), modes));
  }

  private static List<Mode> findModes(
      Operation operation,
      List<ToolSlide> slides,
      TaskModes modes,
      Map<String, SpeedWindow> windows) {
    SpeedWindow window = windows.get(operation.id());
    boolean isWithout = window == null && operation.condition() == SpindleCondition.TURNING;
    if (slides.isEmpty() || isWithout) {
      return List.of();
    }
    return modes.modes(operation, slides, window == null ? new SpeedWindow(0, 0, "none") : window);
  }
}
