package drumline.planner.translate;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.WorkSpindle;
import drumline.planner.model.CutOff;
import drumline.planner.model.PairRule;
import drumline.planner.model.PickUp;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import drumline.shop.machine.Position;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes a route and a machine as a planning problem in whole numbers. */
public final class RouteTranslator {
  private final Route route;
  private final Machine machine;
  private final GripDiameters diameters;
  private final List<Problem> problems = new ArrayList<>();

  private RouteTranslator(Route route, Machine machine, GripDiameters diameters) {
    this.route = route;
    this.machine = machine;
    this.diameters = diameters;
  }

  /**
   * The planning problem, or what stands against it, all at once.
   *
   * @param part piece, for its length and where the pick-up spindle grips
   * @param bar stock, for its size
   * @param pins places that the user fixes
   * @throws IllegalArgumentException if the machine has no drum
   */
  public static TranslationResult translate(
      Route route, Machine machine, Part part, Bar bar, List<Pin> pins) {
    if (machine.kind() != Machine.Kind.DRUM && machine.kind() != Machine.Kind.ROTARY_TRANSFER) {
      throw new IllegalArgumentException(
          "machine is " + machine.name() + " of kind " + machine.kind() + ", allowed: a drum");
    }
    GripDiameters diameters = GripDiameters.of(part, bar);
    RouteTranslator translator = new RouteTranslator(route, machine, diameters);
    translator.problems.addAll(WorkFit.problems(machine, part, bar));
    return translator.result(pins);
  }

  private TranslationResult result(List<Pin> pins) {
    List<Operation> cutOffs =
        route.operations().stream().filter(o -> o.kind() == OperationKind.CUT_OFF).toList();
    boolean isBarWork = machine.kind() == Machine.Kind.DRUM;
    if (isBarWork && cutOffs.size() != 1) {
      problems.add(
          Problem.error(
              "no-cut-off",
              "route",
              cutOffs.size() + " operations that part the piece",
              "one",
              "Maybe the route was edited: the piece must be cut off once."));
    }
    checkRules();
    PinReader reader = new PinReader(route, machine, pins);
    TaskList tasks = new TaskList(route, machine, diameters, reader.speedsRevPerMin());
    problems.addAll(tasks.problems());
    PinReader.Pins read = reader.pins(tasks.tasks());
    problems.addAll(read.problems());
    if (problems.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR)) {
      return new TranslationResult(Optional.empty(), problems);
    }
    PlanningProblem problem =
        new PlanningProblem(
            machine.lastPosition(),
            slides(),
            read.tasks(),
            precedences(),
            pairRules(),
            drumRules(),
            Rounding.ms(machine.indexS()),
            cutOffs.stream().findFirst().map(this::cutOff),
            cutOffs.isEmpty() ? Optional.empty() : pickUp(),
            read.pins(),
            EquipmentList.of(route, machine, read.tasks()));
    return new TranslationResult(
        Optional.of(new Translation(machine.name(), problem, tasks.drumWindows(), tasks.notes())),
        problems);
  }

  private void checkRules() {
    route.orders().forEach(rule -> checkIds("order", rule.beforeId(), rule.afterId()));
    route.pairs().forEach(rule -> checkIds("pair", rule.oneId(), rule.otherId()));
  }

  private void checkIds(String what, String oneId, String otherId) {
    for (String id : List.of(oneId, otherId)) {
      if (route.findOperation(id).isEmpty()) {
        problems.add(
            Problem.error(
                "unknown-operation",
                "route, " + what + " rule " + oneId + " … " + otherId,
                id,
                "an operation of the route",
                "Maybe it was left out: leave out its rules too."));
      }
    }
  }

  private List<Slide> slides() {
    List<Slide> slides = new ArrayList<>();
    for (Position position : machine.positions()) {
      position.slides().forEach(slide -> slides.add(slide(slide, position.number())));
    }
    drumline.shop.machine.PickUp pickUp = machine.pickUp();
    if (pickUp != null && route.operations().stream().anyMatch(RouteTranslator::isCutOff)) {
      pickUp.slides().forEach(slide -> slides.add(slide(slide, machine.lastPosition() + 1)));
    }
    return slides;
  }

  private static boolean isCutOff(Operation operation) {
    return operation.kind() == OperationKind.CUT_OFF;
  }

  private static Slide slide(ToolSlide slide, int position) {
    return new Slide(slide.id(), position, slide.seatCount(), Rounding.ms(slide.toolShiftS()));
  }

  private List<Precedence> precedences() {
    return route.orders().stream()
        .map(
            rule ->
                new Precedence(
                    rule.beforeId(),
                    rule.afterId(),
                    Precedence.Sharing.ANY_SLIDE,
                    0,
                    rule.reason()))
        .toList();
  }

  private List<PairRule> pairRules() {
    return route.pairs().stream()
        .map(rule -> new PairRule(kind(rule), rule.oneId(), rule.otherId(), rule.reason()))
        .toList();
  }

  private static PairRule.Kind kind(drumline.shop.operation.PairRule rule) {
    return switch (rule.kind()) {
      case SAME_POSITION -> PairRule.Kind.MUST_SHARE;
      case OTHER_POSITION -> PairRule.Kind.MUST_NOT_SHARE;
      case NOT_TOGETHER -> PairRule.Kind.MUST_NOT_OVERLAP;
    };
  }

  private SpindleRules drumRules() {
    return rules(
        WorkSpindle.ofDrum(machine, diameters),
        machine.drive().coupling() == SpindleDrive.Coupling.COMMON
            ? SpindleRules.Drive.COMMON_SPEED
            : SpindleRules.Drive.INDEPENDENT);
  }

  /** The core reads a run-up of 0 as instant, so a slower one than 1 rev/min each second is 1. */
  private static SpindleRules rules(WorkSpindle spindle, SpindleRules.Drive drive) {
    return new SpindleRules(
        Math.max(1, Rounding.revPerMin(spindle.runUpRevPerMinPerS())),
        Rounding.ms(spindle.orientS()),
        (int) Math.ceil(spindle.highestRevPerMin()),
        drive,
        SpindleRules.HeldWork.ALONE);
  }

  private CutOff cutOff(Operation operation) {
    return new CutOff(operation.id(), Rounding.ms(machine.barFeed().feedOutS()), List.of());
  }

  private Optional<PickUp> pickUp() {
    return Optional.ofNullable(machine.pickUp())
        .map(
            p ->
                new PickUp(
                    Rounding.ms(p.gripS()),
                    Rounding.ms(p.retractS()),
                    Rounding.ms(p.ejectS()),
                    Rounding.ms(p.returnS()),
                    p.spindleCount(),
                    rules(
                        WorkSpindle.ofPickUp(machine, diameters), SpindleRules.Drive.INDEPENDENT)));
  }
}
