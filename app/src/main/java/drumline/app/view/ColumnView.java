package drumline.app.view;

import drumline.app.answer.layout.Block;
import drumline.app.answer.layout.Column;
import drumline.app.answer.layout.Lane;
import drumline.app.answer.layout.PinAnswer;
import drumline.app.answer.layout.Span;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.layout.SlideChoice;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.drawing.wall.KindPattern;
import drumline.shape.workpiece.PositionState;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The columns of the cycle wall. */
final class ColumnView {
  private final LayoutBench bench;
  private final LaidOut laid;
  private final Map<String, List<Integer>> breaches;
  private final Map<String, PinAnswer> pins;
  private final Set<String> moved;
  private final Pictures pictures;
  private final SlideChoice slides;

  /**
   * The columns.
   *
   * @param breaches indexes of findings by operation
   * @param pins pins by operation
   * @param moved operations that stand elsewhere than in the layout it began from
   */
  ColumnView(
      LayoutBench bench,
      LaidOut laid,
      Map<String, List<Integer>> breaches,
      Map<String, PinAnswer> pins,
      Set<String> moved,
      Pictures pictures) {
    this.bench = bench;
    this.laid = laid;
    this.breaches = breaches;
    this.pins = pins;
    this.moved = moved;
    this.slides = new SlideChoice(bench.machine());
    this.pictures = pictures;
  }

  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    laid.timeline().positions().forEach(position -> columns.add(column(position)));
    PositionTimeline back = laid.timeline().back();
    if (back != null) {
      columns.add(column(back));
    }
    return columns;
  }

  private Column column(PositionTimeline position) {
    int number = position.position();
    Optional<PositionState> state = laid.states().findPosition(number);
    return new Column(
        number,
        HeadView.name(bench.machine(), number),
        number > bench.machine().lastPosition() ? "pick-up" : "drum",
        Rounded.seconds(position.busyS()),
        Rounded.seconds(position.slackS()),
        number == laid.timeline().governing(),
        state.map(this::picture).orElse(null),
        state.map(s -> Rounded.of(s.removed().volumeMm3(), 1)).orElse(null),
        position.spindle().stream()
            .map(
                s ->
                    new Column.SpindleStretch(
                        Rounded.words(s.kind()),
                        Rounded.words(s.condition()),
                        Rounded.of(s.revPerMin(), 1),
                        Rounded.seconds(s.startS()),
                        Rounded.seconds(s.endS())))
            .toList(),
        position.fixed().stream()
            .map(
                f ->
                    new Column.Fixed(
                        f.title(), Rounded.seconds(f.startS()), Rounded.seconds(f.endS())))
            .toList(),
        slides.at(number).stream().map(slide -> lane(slide, position)).toList());
  }

  private @Nullable String picture(PositionState state) {
    return pictures == Pictures.DRAWN ? bench.picture(laid.states(), state) : null;
  }

  private Lane lane(ToolSlide slide, PositionTimeline position) {
    Map<String, String> equipment = new TreeMap<>();
    slide
        .equipment()
        .forEach((kind, fitting) -> equipment.put(Rounded.words(kind), Rounded.words(fitting)));
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < position.operations().size(); i++) {
      OperationSpan span = position.operations().get(i);
      if (span.slideId().equals(slide.id())) {
        blocks.add(block(span, i + 1));
      }
    }
    return new Lane(
        slide.id(),
        Rounded.words(slide.kind()),
        slide.seatCount(),
        slide.axes().stream().map(Enum::name).sorted().toList(),
        equipment,
        slide.thrustN(),
        slide.toolShiftS(),
        blocks);
  }

  private Block block(OperationSpan span, int orderCount) {
    Operation operation = bench.route().operation(span.operationId());
    return new Block(
        operation.id(),
        operation.featureId(),
        operation.kind().words(),
        Rounded.words(KindPattern.of(operation.kind())),
        operation.title(),
        orderCount,
        Rounded.seconds(span.startS()),
        Rounded.seconds(span.endS()),
        Rounded.of(span.spindleRevPerMin(), 1),
        spans(span),
        pins.get(operation.id()),
        moved.contains(operation.id()),
        breaches.getOrDefault(operation.id(), List.of()));
  }

  static List<Span> spans(OperationSpan span) {
    return span.elements().stream()
        .map(
            e ->
                new Span(
                    Rounded.words(e.kind()),
                    Rounded.seconds(e.startS()),
                    Rounded.seconds(e.endS())))
        .toList();
  }
}
