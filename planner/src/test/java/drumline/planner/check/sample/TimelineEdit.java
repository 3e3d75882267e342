package drumline.planner.check.sample;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.Timeline;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Ways to spoil a timeline. */
public final class TimelineEdit {
  private TimelineEdit() {}

  /** One operation's time replaced. */
  public static UnaryOperator<Timeline> span(String id, UnaryOperator<OperationSpan> change) {
    return positions(
        p ->
            new PositionTimeline(
                p.position(),
                p.operations().stream()
                    .map(s -> s.operationId().equals(id) ? change.apply(s) : s)
                    .toList(),
                p.spindle(),
                p.fixed(),
                p.busyS(),
                p.slackS()));
  }

  /** One operation later, or earlier by a negative time. */
  public static UnaryOperator<Timeline> moved(String id, double byS) {
    return span(
        id,
        s ->
            new OperationSpan(
                s.operationId(),
                s.slideId(),
                s.spindleRevPerMin(),
                s.startS() + byS,
                s.endS() + byS,
                s.elements().stream()
                    .map(e -> new TimeElement(e.kind(), e.startS() + byS, e.endS() + byS))
                    .toList()));
  }

  /** One kind of element of an operation shorter, everything after it earlier. */
  public static UnaryOperator<Timeline> shorter(String id, TimeElement.Kind kind, double byS) {
    return span(
        id,
        s -> {
          List<TimeElement> elements = new ArrayList<>();
          double t = s.startS();
          for (TimeElement e : s.elements()) {
            double lengthS = e.kind() == kind ? e.lengthS() - byS : e.lengthS();
            elements.add(new TimeElement(e.kind(), t, t + lengthS));
            t += lengthS;
          }
          return new OperationSpan(
              s.operationId(), s.slideId(), s.spindleRevPerMin(), s.startS(), t, elements);
        });
  }

  /** One operation without one of its elements. */
  public static UnaryOperator<Timeline> withoutElement(String id, TimeElement.Kind kind) {
    return span(
        id,
        s ->
            new OperationSpan(
                s.operationId(),
                s.slideId(),
                s.spindleRevPerMin(),
                s.startS(),
                s.endS(),
                s.elements().stream().filter(e -> e.kind() != kind).toList()));
  }

  /** Each position, and the pick-up spindle's, changed. */
  public static UnaryOperator<Timeline> positions(UnaryOperator<PositionTimeline> change) {
    return t ->
        new Timeline(
            t.positions().stream().map(change).toList(),
            t.back() == null ? null : change.apply(t.back()),
            t.workS(),
            t.indexS(),
            t.governing(),
            t.piecesPerIndexCount());
  }

  /** Spindles whose conditions are not shown. */
  public static UnaryOperator<Timeline> withoutSpindles() {
    return positions(
        p ->
            new PositionTimeline(
                p.position(), p.operations(), List.of(), p.fixed(), p.busyS(), p.slackS()));
  }

  /** Other slack than there is. */
  public static UnaryOperator<Timeline> slackBy(double byS) {
    return positions(
        p ->
            new PositionTimeline(
                p.position(), p.operations(), p.spindle(), p.fixed(), p.busyS(), p.slackS() + byS));
  }

  /** The drum indexes at another time. */
  public static UnaryOperator<Timeline> work(double workS, double indexS) {
    return t ->
        new Timeline(
            t.positions(), t.back(), workS, indexS, t.governing(), t.piecesPerIndexCount());
  }
}
