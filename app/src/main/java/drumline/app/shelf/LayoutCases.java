package drumline.app.shelf;

import drumline.app.answer.DeskRefusal;
import drumline.app.layout.KeptLayout;
import drumline.app.layout.KeptLayoutJson;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.layout.RedividedRoute;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import drumline.store.entry.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Brings kept layouts together with the inquiry as it stands. */
public final class LayoutCases {
  private static final int KEPT_BENCHES = 24;

  private final Shelves shelves;
  private final Lately<BenchKey, LayoutBench> benches = new Lately<>(KEPT_BENCHES);
  private final Lately<CaseKey, LaidOut> laid = new Lately<>(KEPT_BENCHES);
  private final Lately<Long, KeptLayout> layouts = new Lately<>(KEPT_BENCHES);

  private record BenchKey(String text, String machineName, Map<String, Integer> parts) {}

  private record CaseKey(String text, long layoutId) {}

  public LayoutCases(Shelves shelves) {
    this.shelves = shelves;
  }

  /** The present layout of an inquiry, if something is planned. */
  public Optional<LayoutCase> present(Shelves.State state) {
    return state.kept().layoutId().isPresent()
        ? stored(state, state.kept().layoutId().getAsLong())
        : Optional.empty();
  }

  /** A stored layout of the inquiry; empty where neither text nor machine allow it any more. */
  public Optional<LayoutCase> stored(Shelves.State state, long layoutId) {
    KeptLayout kept = layouts.get(layoutId, id -> KeptLayoutJson.read(plan(state, id).planJson()));
    ReadText then = shelves.read(kept.inquiryText());
    boolean isReadable = state.read().findInquiry().isPresent();
    ReadText now = isReadable ? state.read() : then;
    String text = isReadable ? state.kept().text() : kept.inquiryText();
    return now.findInquiry()
        .flatMap(
            inquiry ->
                inquiry.machines().stream()
                    .filter(m -> m.name().equals(kept.layout().machineName()))
                    .findFirst()
                    .map(machine -> of(layoutId, kept, then, inquiry, machine, text)));
  }

  private LayoutCase of(
      long layoutId,
      KeptLayout kept,
      ReadText then,
      Inquiry inquiry,
      Machine machine,
      String text) {
    LayoutBench bench =
        benches.get(
            new BenchKey(text, machine.name(), kept.parts()),
            key ->
                new LayoutBench(
                    inquiry, machine, RedividedRoute.of(inquiry, machine, key.parts())));
    Optional<Inquiry> old = then.findInquiry();
    boolean isSame = old.filter(o -> asksTheSame(o, inquiry, machine)).isPresent();
    boolean boundHolds =
        isSame
            && old.filter(
                    o ->
                        o.wishes().pins().isEmpty()
                            || o.wishes().pins().equals(inquiry.wishes().pins()))
                .isPresent();
    List<String> notes = new ArrayList<>(kept.notes());
    Layout fitted = fitted(kept.layout(), bench, notes);
    return new LayoutCase(
        layoutId,
        kept,
        bench,
        fitted,
        !isSame,
        boundHolds ? OptionalDouble.of(kept.lowerBoundS()) : OptionalDouble.empty(),
        notes);
  }

  /** Whether two texts ask for the same route on the same machine; pins and money aside. */
  private static boolean asksTheSame(Inquiry one, Inquiry other, Machine machine) {
    return one.part().equals(other.part())
        && one.bar().equals(other.bar())
        && one.material().equals(other.material())
        && one.tools().equals(other.tools())
        && one.machines().contains(machine)
        && one.wishes().orders().equals(other.wishes().orders())
        && one.wishes().leaveOut().equals(other.wishes().leaveOut());
  }

  private static Layout fitted(Layout layout, LayoutBench bench, List<String> notes) {
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : layout.placements()) {
      Optional<Operation> operation = bench.route().findOperation(placement.operationId());
      if (operation.isPresent() && bench.machine().findSlide(placement.slideId()).isPresent()) {
        placements.add(withSpeed(placement, operation.get()));
      } else {
        notes.add(placement.operationId() + " is no longer in the route and was left out.");
      }
    }
    return new Layout(layout.machineName(), placements);
  }

  private static Placement withSpeed(Placement placement, Operation operation) {
    boolean turns = operation.condition() == SpindleCondition.TURNING;
    return turns && !(placement.spindleRevPerMin() > 0)
        ? new Placement(
            placement.operationId(),
            placement.slideId(),
            operation.cut().highestRevPerMin(),
            placement.plannedStartS())
        : placement;
  }

  /** A case laid out; what was laid out lately is not reckoned again. */
  public LaidOut lay(Shelves.State state, LayoutCase one) {
    return laid.get(
        new CaseKey(state.kept().text(), one.layoutId()), key -> one.bench().lay(one.layout()));
  }

  /** A stored plan of this inquiry. */
  public Plan plan(Shelves.State state, long layoutId) {
    return shelves
        .store()
        .plans()
        .findPlan(layoutId)
        .filter(plan -> plan.head().inquiryId() == state.entry().id())
        .orElseThrow(
            () ->
                DeskRefusal.of(
                    DeskRefusal.Kind.MISSING,
                    "There is no layout " + layoutId + " of inquiry " + state.id() + "."));
  }
}
