package drumline.app.view;

import drumline.app.answer.Head;
import drumline.app.answer.layout.FindingAnswer;
import drumline.app.answer.layout.FindingAnswer.BreachAnswer;
import drumline.app.answer.layout.LayoutAnswer;
import drumline.app.answer.layout.PinAnswer;
import drumline.app.layout.Breach;
import drumline.app.layout.Breaches;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.cycle.timeline.Timeline;
import drumline.economics.cost.OptionNeed;
import drumline.economics.triage.Triage;
import drumline.planner.check.Finding;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.machine.Machine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The layout's leaf. */
public final class LayoutView {
  private final LayoutBench bench;
  private final LaidOut laid;
  private final Set<String> moved;
  private final List<FindingAnswer> findings;

  /**
   * The view of a layout.
   *
   * @param moved operations that a person moved; empty if none
   */
  public LayoutView(LayoutBench bench, LaidOut laid, Set<String> moved) {
    this.bench = bench;
    this.laid = laid;
    this.moved = Set.copyOf(moved);
    Breaches breaches = new Breaches(bench, laid, moved);
    this.findings = laid.audit().findings().stream().map(f -> finding(f, breaches)).toList();
  }

  /** Where nothing is planned yet. */
  public static LayoutAnswer none(LayoutFrame frame, Head head, List<PinAnswer> pins) {
    return new LayoutAnswer(
        frame.id(),
        frame.revision(),
        null,
        "none",
        null,
        null,
        head,
        List.of(),
        List.of(),
        List.of(),
        pins,
        List.of(),
        List.of(),
        frame.problems(),
        frame.planningJobId());
  }

  /** The answer. */
  public LayoutAnswer answer(LayoutFrame frame, Triage triage, Pictures pictures) {
    Inquiry inquiry = bench.inquiry();
    Machine machine = bench.machine();
    List<PinAnswer> pins = pins(inquiry);
    Map<String, PinAnswer> pinned = new HashMap<>();
    pins.forEach(pin -> pinned.putIfAbsent(pin.operationId(), pin));
    List<String> notes = new ArrayList<>(frame.notes());
    if (!laid.moneyObstacle().isEmpty()) {
      notes.add("No cost: " + laid.moneyObstacle());
    }
    return new LayoutAnswer(
        frame.id(),
        frame.revision(),
        frame.layoutId(),
        frame.state(),
        new LayoutAnswer.MachineHead(
            machine.name(), machine.title(), machine.lastPosition(), machine.pickUp() != null),
        cycle(frame),
        HeadView.planned(inquiry, machine, triage, laid, frame.boundS(), frame.isProvenOptimal()),
        new ColumnView(bench, laid, byOperation(), pinned, moved, pictures).columns(),
        unplaced(),
        findings,
        pins,
        options(),
        notes,
        frame.problems(),
        frame.planningJobId());
  }

  /** The pins of an inquiry's wishes. */
  public static List<PinAnswer> pins(Inquiry inquiry) {
    return inquiry.wishes().pins().stream().map(LayoutView::pin).toList();
  }

  private static PinAnswer pin(Pin pin) {
    return new PinAnswer(
        pin.operationId(),
        pin.position().isPresent() ? Integer.valueOf(pin.position().getAsInt()) : null,
        pin.slideId().isEmpty() ? null : pin.slideId(),
        pin.spindleRevPerMin().isPresent()
            ? Double.valueOf(pin.spindleRevPerMin().getAsDouble())
            : null);
  }

  private LayoutAnswer.CycleHead cycle(LayoutFrame frame) {
    Timeline timeline = laid.timeline();
    Double bound =
        frame.boundS().isPresent() ? Rounded.seconds(frame.boundS().getAsDouble()) : null;
    return new LayoutAnswer.CycleHead(
        Rounded.seconds(timeline.cycleS()),
        Rounded.seconds(timeline.workS()),
        Rounded.seconds(timeline.indexS()),
        timeline.governing(),
        HeadView.governs(bench.machine(), timeline),
        bound,
        HeadView.gap(timeline.cycleS(), frame.boundS()),
        frame.isProvenOptimal(),
        timeline.piecesPerIndexCount(),
        frame.wallMs());
  }

  private static FindingAnswer finding(Finding finding, Breaches breaches) {
    return new FindingAnswer(
        finding.name(),
        finding.name().replace('-', ' '),
        finding.isPassed(),
        finding.detail(),
        breaches.of(finding).stream().map(LayoutView::breach).toList());
  }

  private static BreachAnswer breach(Breach breach) {
    return new BreachAnswer(
        breach.words(),
        breach.operationIds(),
        emptyAsNull(breach.reason()),
        breach.alsoMove(),
        emptyAsNull(breach.alsoMoveWords()));
  }

  private static @Nullable String emptyAsNull(String text) {
    return text.isEmpty() ? null : text;
  }

  private Map<String, List<Integer>> byOperation() {
    Map<String, List<Integer>> all = new LinkedHashMap<>();
    for (int i = 0; i < findings.size(); i++) {
      int index = i;
      findings.get(i).breaches().stream()
          .flatMap(breach -> breach.operationIds().stream())
          .distinct()
          .forEach(id -> all.computeIfAbsent(id, key -> new ArrayList<>()).add(index));
    }
    return all;
  }

  private List<LayoutAnswer.Unplaced> unplaced() {
    return bench.route().operations().stream()
        .filter(operation -> laid.layout().findPlacement(operation.id()).isEmpty())
        .map(o -> new LayoutAnswer.Unplaced(o.id(), o.featureId(), o.kind().words(), o.title()))
        .toList();
  }

  private List<LayoutAnswer.Option> options() {
    if (laid.money().isEmpty()) {
      return List.of();
    }
    String currency = bench.machine().cost().currency();
    return OptionNeed.of(bench.machine(), bench.route(), laid.layout()).stream()
        .map(
            need ->
                new LayoutAnswer.Option(
                    Rounded.words(need.equipment()) + " on " + need.slideId(),
                    Rounded.money(need.price()),
                    currency))
        .toList();
  }
}
