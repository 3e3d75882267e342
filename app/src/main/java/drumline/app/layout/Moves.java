package drumline.app.layout;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Moves operations of a layout without planning anything. */
public final class Moves {
  /** Of two that begin at one moment the moved one comes first. */
  private static final double JUST_BEFORE_S = 1e-9;

  private final LayoutBench bench;
  private final SlideChoice slides;

  /** Moves on a bench. */
  public Moves(LayoutBench bench) {
    this.bench = bench;
    this.slides = new SlideChoice(bench.machine());
  }

  /**
   * The layout after all moves, one after the other.
   *
   * @throws IllegalArgumentException if a move names an operation, slide or position that is not
   *     there, a speed that is not above 0, or an order below 1
   */
  public Layout apply(Layout layout, List<Move> moves) {
    Layout current = layout;
    for (Move move : moves) {
      current = apply(current, move);
    }
    return current;
  }

  private Layout apply(Layout layout, Move move) {
    Operation operation = bench.route().operation(move.operationId());
    Optional<Placement> old = layout.findPlacement(move.operationId());
    ToolSlide slide = slide(operation, old, move);
    double speed = speed(operation, old, move);
    List<Placement> others =
        layout.placements().stream()
            .filter(p -> !p.operationId().equals(move.operationId()))
            .toList();
    Placement moved = new Placement(operation.id(), slide.id(), speed, 0);
    if (move.order() != null) {
      return ordered(layout.machineName(), others, moved, move.order());
    }
    if (move.startS() != null) {
      return atTime(layout.machineName(), others, moved, move.startS());
    }
    List<Placement> all = new ArrayList<>(others);
    all.add(at(moved, keptStart(layout, old, slide)));
    return new Layout(layout.machineName(), all);
  }

  /** Where it stood if it stays in its position; else behind everything else. */
  private double keptStart(Layout layout, Optional<Placement> old, ToolSlide slide) {
    int position = slides.position(slide.id());
    return old.filter(p -> slides.position(p.slideId()) == position)
        .map(Placement::plannedStartS)
        .orElseGet(
            () ->
                layout.placements().stream()
                        .filter(p -> slides.position(p.slideId()) == position)
                        .mapToDouble(Placement::plannedStartS)
                        .max()
                        .orElse(-1)
                    + 1);
  }

  /** Put among the others of its position by the starts that the clock shows. */
  private Layout atTime(
      String machineName, List<Placement> others, Placement moved, double startS) {
    List<Placement> all = new ArrayList<>();
    for (OperationSpan span : there(machineName, others, moved)) {
      others.stream()
          .filter(p -> p.operationId().equals(span.operationId()))
          .forEach(p -> all.add(at(p, span.startS())));
    }
    others.stream()
        .filter(p -> all.stream().noneMatch(a -> a.operationId().equals(p.operationId())))
        .forEach(all::add);
    all.add(at(moved, startS - JUST_BEFORE_S));
    return new Layout(machineName, all);
  }

  private Layout ordered(String machineName, List<Placement> others, Placement moved, int order) {
    List<String> ids =
        new ArrayList<>(
            there(machineName, others, moved).stream().map(OperationSpan::operationId).toList());
    ids.add(Math.min(order - 1, ids.size()), moved.operationId());
    List<Placement> all = new ArrayList<>();
    for (Placement placement : others) {
      int i = ids.indexOf(placement.operationId());
      all.add(i < 0 ? placement : at(placement, i));
    }
    all.add(at(moved, ids.indexOf(moved.operationId())));
    return new Layout(machineName, all);
  }

  private static Placement at(Placement p, double startS) {
    return new Placement(p.operationId(), p.slideId(), p.spindleRevPerMin(), startS);
  }

  /** What is done in the moved operation's new position, by start. */
  private List<OperationSpan> there(String machineName, List<Placement> others, Placement moved) {
    Timeline timeline = bench.clock().timeline(new Layout(machineName, others));
    int position = slides.position(moved.slideId());
    PositionTimeline there =
        position > timeline.positions().size()
            ? timeline.back()
            : timeline.positions().get(position - 1);
    return there == null ? List.of() : there.operations();
  }

  private ToolSlide slide(Operation operation, Optional<Placement> old, Move move) {
    if (move.slideId() != null) {
      return slides.slide(move.slideId());
    }
    if (move.position() != null) {
      return slides.first(operation, move.position());
    }
    return old.map(p -> slides.slide(p.slideId()))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "moves: "
                        + operation.id()
                        + " has no place yet, allowed: a move with slideId or position"));
  }

  private static double speed(Operation operation, Optional<Placement> old, Move move) {
    Double asked = move.spindleRevPerMin();
    if (operation.condition() == SpindleCondition.HELD
        || operation.condition() == SpindleCondition.C_AXIS) {
      return 0;
    }
    if (asked == null) {
      double fastest = operation.cut().highestRevPerMin();
      return old.map(Placement::spindleRevPerMin).filter(n -> n > 0).orElse(fastest);
    }
    if (!(asked > 0)) {
      throw new IllegalArgumentException(
          "spindleRevPerMin: " + asked + " for " + operation.id() + ", allowed: above 0");
    }
    return asked;
  }
}
