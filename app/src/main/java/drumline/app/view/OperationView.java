package drumline.app.view;

import drumline.app.answer.layout.OperationAnswer;
import drumline.app.answer.layout.OperationAnswer.Limit;
import drumline.app.answer.layout.OperationAnswer.Place;
import drumline.app.answer.layout.OperationAnswer.Reasoned;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.layout.SlideChoice;
import drumline.cycle.timeline.OperationSpan;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One operation with every figure and what limits it. */
public final class OperationView {
  private OperationView() {}

  /**
   * The answer.
   *
   * @param revision revision of the text
   * @throws IllegalArgumentException if the route has no such operation
   */
  public static OperationAnswer answer(
      int revision, LayoutBench bench, LaidOut laid, String operationId) {
    Operation operation = bench.route().operation(operationId);
    Optional<OperationSpan> span = laid.timeline().findOperation(operationId);
    SlideChoice slides = new SlideChoice(bench.machine());
    double speed = RouteView.speed(operation, Optional.of(laid.layout()));
    return new OperationAnswer(
        revision,
        RouteView.figures(operation, speed),
        span.map(s -> slides.position(s.slideId())).orElse(null),
        span.map(OperationSpan::slideId).orElse(null),
        span.map(s -> Rounded.of(s.spindleRevPerMin(), 1)).orElse(null),
        span.map(ColumnView::spans).orElse(List.of()),
        span.map(s -> limits(bench, operation, slides.slide(s.slideId()), speed)).orElse(List.of()),
        slides.all(operation).stream()
            .map(
                slide ->
                    new Place(
                        slide.id(),
                        slides.position(slide.id()),
                        slide.id()
                            + ", "
                            + HeadView.name(bench.machine(), slides.position(slide.id()))))
            .toList(),
        bench.route().orders().stream()
            .filter(order -> order.beforeId().equals(operationId))
            .map(order -> new Reasoned(order.afterId(), order.reason()))
            .toList(),
        bench.route().orders().stream()
            .filter(order -> order.afterId().equals(operationId))
            .map(order -> new Reasoned(order.beforeId(), order.reason()))
            .toList());
  }

  private static List<Limit> limits(
      LayoutBench bench, Operation operation, ToolSlide slide, double speedRevPerMin) {
    String source = bench.machine().name() + ": " + bench.machine().source();
    PickUp pickUp = bench.machine().pickUp();
    boolean isBack = pickUp != null && pickUp.slides().contains(slide);
    double torqueNm =
        isBack && pickUp != null ? pickUp.torqueNm() : bench.machine().drive().torqueNm();
    double powerKw =
        isBack && pickUp != null ? pickUp.powerKw() : bench.machine().drive().powerKw();
    List<Limit> limits = new ArrayList<>();
    limits.add(
        limit("torque at the spindle", operation.loads().torqueNm(), torqueNm, "Nm", source));
    limits.add(
        limit(
            "power at the spindle",
            operation.loads().spindlePowerKw(speedRevPerMin),
            powerKw,
            "kW",
            source));
    limits.add(
        limit(
            "feed force of the slide",
            operation.loads().feedForceN(),
            slide.thrustN(),
            "N",
            source));
    if (speedRevPerMin > 0) {
      limits.add(
          limit(
              "speed",
              speedRevPerMin,
              operation.cut().highestRevPerMin(),
              "rev/min",
              operation.cut().speedLimit()));
    }
    return limits;
  }

  private static Limit limit(String words, double figure, double most, String unit, String source) {
    return new Limit(
        words,
        number(figure) + " " + unit,
        number(most) + " " + unit,
        most > 0 ? Rounded.of(100 * figure / most, 1) : 0,
        source);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value >= 100 ? "%.0f" : "%.2f", value);
  }
}
