package drumline.drawing;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.PositionTimeline.FixedSpan;
import drumline.cycle.timeline.SpindleSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.TimeElement.Kind;
import drumline.cycle.timeline.Timeline;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.machine.Axis;
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
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** An invented machine and timelines put together by a simple hand-rule, for drawing. */
public final class Walls {

  /** One planned stay of a tool: operation, slide, start, moving in, cutting, dwell, moving out. */
  public record Stay(
      Operation operation, String slideId, double startS, double cutS, double dwellS) {}

  private Walls() {}

  public static Machine machine(int positions, int slidesPerPosition) {
    List<Position> places = new ArrayList<>();
    for (int number = 1; number <= positions; number++) {
      List<ToolSlide> slides = new ArrayList<>();
      for (int i = 0; i < slidesPerPosition; i++) {
        SlideKind kind = i == slidesPerPosition - 1 ? SlideKind.END : SlideKind.CROSS;
        slides.add(slide(number + "-" + i, kind));
      }
      places.add(new Position(number, slides));
    }
    PickUp pickUp =
        new PickUp(
            1,
            5000,
            7,
            30,
            20000,
            0.5,
            0.4,
            0.4,
            0.3,
            3000,
            0.4,
            List.of(slide("b-0", SlideKind.BACK), slide("b-1", SlideKind.BACK)));
    return new Machine(
        "drum-" + positions,
        "Generic drum machine, " + positions + " spindles, Ø22",
        Machine.Kind.DRUM,
        places,
        new SpindleDrive(SpindleDrive.Coupling.INDEPENDENT, 100, 6000, 9, 40, 3000, 0.4, 200),
        new Workholding(20000, 0.2, 0.5, 20, 2),
        pickUp,
        new BarFeed(22, 3000, 120, 0.8, 15, BarFeed.Loading.IN_SHADOW),
        0.8,
        80,
        new MachineCost("EUR", BigDecimal.TEN, Map.of(), BigDecimal.TEN, 4, 2, 85),
        "invented");
  }

  private static ToolSlide slide(String id, SlideKind kind) {
    return new ToolSlide(id, kind, Set.of(Axis.X, Axis.Z), 80, 20, 5, 6000, 2, 0.3, Map.of());
  }

  public static Timeline timeline(Machine machine, List<Stay> stays, double indexS) {
    double workS =
        stays.stream()
            .filter(stay -> !stay.slideId().startsWith("b"))
            .mapToDouble(Walls::endS)
            .max()
            .orElse(1);
    List<PositionTimeline> positions = new ArrayList<>();
    int governing = 1;
    for (Position position : machine.positions()) {
      PositionTimeline timeline = position(machine, position.number(), stays, workS);
      positions.add(timeline);
      governing = timeline.busyS() >= workS ? position.number() : governing;
    }
    int back = machine.lastPosition() + 1;
    PositionTimeline pickUp = position(machine, back, stays, workS + indexS);
    return new Timeline(positions, pickUp, workS, indexS, governing, 1);
  }

  private static PositionTimeline position(
      Machine machine, int number, List<Stay> stays, double limitS) {
    boolean isBack = number > machine.lastPosition();
    String prefix = isBack ? "b-" : number + "-";
    List<Stay> here =
        stays.stream()
            .filter(stay -> stay.slideId().startsWith(prefix))
            .sorted(Comparator.comparingDouble(Stay::startS))
            .toList();
    List<OperationSpan> spans = new ArrayList<>();
    List<SpindleSpan> spindle = new ArrayList<>();
    double busyS = 0;
    for (Stay stay : here) {
      spans.add(span(stay));
      busyS = Math.max(busyS, endS(stay));
    }
    List<FixedSpan> fixed = new ArrayList<>();
    if (isBack) {
      fixed.add(new FixedSpan("grip", 0, 0.6));
      fixed.add(new FixedSpan("eject", busyS, busyS + 0.5));
      busyS += 0.5;
    } else if (number == 1) {
      fixed.add(new FixedSpan("feed bar to stop", 0, 0.8));
    }
    SpindleCondition condition =
        number % 4 == 0
            ? SpindleCondition.HELD
            : number % 4 == 3 ? SpindleCondition.C_AXIS : SpindleCondition.TURNING;
    double rpm = condition == SpindleCondition.TURNING ? 2400 + 100 * number : 0;
    spindle.add(
        new SpindleSpan(SpindleSpan.Kind.CHANGE, condition, rpm, 0, Math.min(0.35, limitS)));
    spindle.add(new SpindleSpan(SpindleSpan.Kind.KEEP, condition, rpm, 0.35, limitS));
    return new PositionTimeline(number, spans, spindle, fixed, busyS, Math.max(0, limitS - busyS));
  }

  private static double endS(Stay stay) {
    return stay.startS() + 0.15 + stay.cutS() + stay.dwellS() + 0.1;
  }

  private static OperationSpan span(Stay stay) {
    double cutFromS = stay.startS() + 0.15;
    double cutToS = cutFromS + stay.cutS();
    double backS = cutToS + stay.dwellS();
    List<TimeElement> elements = new ArrayList<>();
    elements.add(new TimeElement(Kind.APPROACH, stay.startS(), cutFromS));
    elements.add(new TimeElement(Kind.CUT, cutFromS, cutToS));
    if (stay.dwellS() > 0) {
      elements.add(new TimeElement(Kind.DWELL, cutToS, backS));
    }
    elements.add(new TimeElement(Kind.RETRACT, backS, endS(stay)));
    return new OperationSpan(
        stay.operation().id(), stay.slideId(), 2400, stay.startS(), endS(stay), elements);
  }

  public static Route route(List<Stay> stays) {
    return new Route(stays.stream().map(Stay::operation).toList(), List.of(), List.of(), List.of());
  }

  /** The half-sections that follow from the stays, in the order of travel. */
  public static WorkpieceStates states(
      Machine machine, List<Stay> stays, drumline.shop.part.Bar bar, drumline.shop.part.Part part) {
    List<PositionWork> work = new ArrayList<>();
    for (int number = 1; number <= machine.lastPosition() + 1; number++) {
      String prefix = number > machine.lastPosition() ? "b-" : number + "-";
      List<Operation> here =
          stays.stream()
              .filter(stay -> stay.slideId().startsWith(prefix))
              .sorted(Comparator.comparingDouble(Stay::startS))
              .map(Stay::operation)
              .toList();
      work.add(new PositionWork(number, here));
    }
    return WorkpieceStates.of(bar, part, work);
  }
}
