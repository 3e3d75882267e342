package drumline.cycle.sequential;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The same route on a turning centre with two spindles or on a sliding-headstock lathe: one tool
 * after another at each spindle, each at its own fastest speed.
 *
 * <p>Main spindle: for each operation the next tool (index time) while the spindle changes, then
 * the operation; then grip while the parting tool comes, cut-off, bar feed. Second spindle, on the
 * piece before: grip, cut-off, retract, its operations, eject, return. Cycle = the longer of both,
 * since they meet at grip and cut-off only. All in sequence = the sum of both less grip and
 * cut-off, which they share.
 *
 * <p>Source: [BASIS] 2.1 and section 3 for times; the order of steps is common practice. Known
 * limits: no two tools in cut at one spindle; any slide reaches any side. An operation that can be
 * done at either end goes to the second spindle, with all that need the same grip, where order
 * allows and the cycle becomes no longer.
 */
public final class SequentialPlan {
  private final Route route;
  private final Machine machine;
  private final WorkSpindle mainSpindle;
  private final @Nullable WorkSpindle secondSpindle;
  private final List<Problem> problems = new ArrayList<>();

  private SequentialPlan(Route route, Machine machine, GripDiameters diameters) {
    this.route = route;
    this.machine = machine;
    mainSpindle = WorkSpindle.ofDrum(machine, diameters);
    secondSpindle = machine.pickUp() == null ? null : WorkSpindle.ofPickUp(machine, diameters);
  }

  /**
   * The cycle, or what stands against it.
   *
   * @throws IllegalArgumentException if the machine is one with a drum
   */
  public static SequentialResult of(Route route, Machine machine, GripDiameters diameters) {
    if (machine.kind() != Machine.Kind.TWIN_SPINDLE
        && machine.kind() != Machine.Kind.SLIDING_HEAD) {
      throw new IllegalArgumentException(
          "machine is "
              + machine.name()
              + " of kind "
              + machine.kind()
              + ", allowed: TWIN_SPINDLE or SLIDING_HEAD");
    }
    SequentialPlan plan = new SequentialPlan(route, machine, diameters);
    Optional<SequentialCycle> cycle = plan.best();
    return new SequentialResult(plan.problems.isEmpty() ? cycle : Optional.empty(), plan.problems);
  }

  private Optional<SequentialCycle> best() {
    List<Operation> ordered = ordered();
    Set<String> atSecond =
        ordered.stream()
            .filter(operation -> operation.end() == WorkEnd.BACK)
            .map(Operation::id)
            .collect(Collectors.toUnmodifiableSet());
    Optional<SequentialCycle> best = cycle(ordered, atSecond);
    if (best.isEmpty() || machine.pickUp() == null) {
      return best;
    }
    for (int k = ordered.size() - 1; k >= 0; k--) {
      Operation operation = ordered.get(k);
      Set<String> more = new HashSet<>(atSecond);
      more.addAll(sameGrip(operation));
      if (operation.end() == WorkEnd.EITHER && !atSecond.contains(operation.id()) && mayGo(more)) {
        int before = problems.size();
        Optional<SequentialCycle> next = cycle(ordered, more);
        if (next.isPresent() && next.get().cycleS() <= best.get().cycleS()) {
          best = next;
          atSecond = more;
        }
        problems.subList(before, problems.size()).clear();
      }
    }
    return best;
  }

  /** Whether none of these is for the main spindle only and nothing waits for them there. */
  private boolean mayGo(Set<String> atSecond) {
    return atSecond.stream().allMatch(id -> route.operation(id).end() != WorkEnd.FRONT)
        && route.orders().stream()
            .filter(rule -> atSecond.contains(rule.beforeId()))
            .allMatch(rule -> atSecond.contains(rule.afterId()));
  }

  /** The operation with all that must be done in the same grip. */
  private Set<String> sameGrip(Operation operation) {
    Set<String> together = new HashSet<>(Set.of(operation.id()));
    boolean grown = true;
    while (grown) {
      grown = false;
      for (PairRule pair : route.pairs()) {
        if (pair.kind() == PairRule.Kind.SAME_POSITION
            && together.contains(pair.oneId()) != together.contains(pair.otherId())) {
          grown = together.addAll(List.of(pair.oneId(), pair.otherId()));
        }
      }
    }
    return together;
  }

  /** The route's operations, moved only where an order rule asks for it. */
  private List<Operation> ordered() {
    List<Operation> waiting = new ArrayList<>(route.operations());
    List<Operation> ordered = new ArrayList<>();
    while (!waiting.isEmpty()) {
      Operation next =
          waiting.stream()
              .filter(o -> waiting.stream().noneMatch(w -> mustPrecede(w, o)))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "orders make operations wait for each other: "
                              + waiting.stream().map(Operation::id).toList()
                              + ", allowed: an order without a circle"));
      waiting.remove(next);
      ordered.add(next);
    }
    return ordered;
  }

  private boolean mustPrecede(Operation one, Operation other) {
    return route.orders().stream()
        .anyMatch(r -> r.beforeId().equals(one.id()) && r.afterId().equals(other.id()));
  }

  private Optional<SequentialCycle> cycle(List<Operation> ordered, Set<String> atSecond) {
    List<Task> main = new ArrayList<>();
    List<Task> second = new ArrayList<>();
    Task cutOff = null;
    int before = problems.size();
    for (Operation operation : ordered) {
      boolean isSecond = atSecond.contains(operation.id());
      Task task = findTask(operation, isSecond).orElse(null);
      if (task != null && operation.kind() == OperationKind.CUT_OFF) {
        cutOff = task;
      } else if (task != null) {
        (isSecond ? second : main).add(task);
      }
    }
    if (cutOff == null && problems.size() == before) {
      problems.add(
          Problem.error("no-cut-off", "route", "no operation that parts the piece", "one", ""));
    }
    return cutOff == null || problems.size() > before
        ? Optional.empty()
        : Optional.of(chains(main, cutOff, second));
  }

  private SequentialCycle chains(List<Task> main, Task cutOff, List<Task> second) {
    PickUp pickUp = machine.pickUp();
    SpindleChain mainChain = new SpindleChain(mainSpindle, machine.indexS(), cutOff);
    main.forEach(mainChain::work);
    double beforeGripS = mainChain.lengthS();
    mainChain.part(cutOff, pickUp == null ? 0 : pickUp.gripS());
    double sharedS = mainChain.lengthS() - beforeGripS;
    mainChain.handle("feed bar to stop", machine.barFeed().feedOutS());
    if (pickUp == null || secondSpindle == null) {
      double cycleS = mainChain.lengthS();
      return new SequentialCycle(mainChain.steps(), List.of(), cycleS, cycleS);
    }
    SpindleChain secondChain = new SpindleChain(secondSpindle, machine.indexS(), cutOff);
    secondChain.handle("grip and cut off", sharedS);
    secondChain.handle("retract", pickUp.retractS());
    second.forEach(secondChain::work);
    secondChain.handle("eject", pickUp.ejectS());
    secondChain.handle("return", pickUp.returnS());
    return new SequentialCycle(
        mainChain.steps(),
        secondChain.steps(),
        Math.max(mainChain.lengthS(), secondChain.lengthS()),
        mainChain.lengthS() + secondChain.lengthS() - sharedS);
  }

  private Optional<Task> findTask(Operation operation, boolean isSecond) {
    WorkSpindle spindle = isSecond ? secondSpindle : mainSpindle;
    PickUp pickUp = machine.pickUp();
    Stream<ToolSlide> slides =
        !isSecond
            ? machine.drumSlides()
            : pickUp == null ? Stream.empty() : pickUp.slides().stream();
    Optional<ToolSlide> slide =
        slides.filter(s -> operation.equipment().stream().allMatch(s::canHave)).findFirst();
    if (spindle == null || slide.isEmpty()) {
      problems.add(
          Problem.error(
              "no-slide",
              operation.id(),
              operation.title() + " needs " + operation.equipment(),
              "a slide of " + machine.name() + " that has or can have it",
              ""));
      return Optional.empty();
    }
    return speed(operation, spindle)
        .map(n -> new Task(operation, slide.get(), SpindleState.of(operation, n)));
  }

  private Optional<Double> speed(Operation operation, WorkSpindle spindle) {
    if (operation.condition() != SpindleCondition.TURNING) {
      return Optional.of(0.0);
    }
    Optional<SpeedWindow> window = SpeedWindow.find(operation, spindle);
    if (window.isEmpty()) {
      problems.add(
          Problem.error(
              "no-speed",
              operation.id(),
              operation.title() + " has no speed within its own window, power and grip",
              "a speed of " + machine.name(),
              "Maybe a smaller depth of cut or feed."));
    }
    return window.map(SpeedWindow::highestRevPerMin);
  }
}
