package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.InquiryText;
import drumline.app.answer.layout.LayoutAnswer;
import drumline.app.answer.layout.LayoutEntry;
import drumline.app.answer.layout.OperationAnswer;
import drumline.app.answer.layout.PinAnswer;
import drumline.app.layout.KeptLayout;
import drumline.app.layout.LaidOut;
import drumline.app.layout.Move;
import drumline.app.layout.Moves;
import drumline.app.shelf.KeptPlans;
import drumline.app.shelf.LayoutCase;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.Shelves;
import drumline.app.view.LayoutFrame;
import drumline.app.view.LayoutView;
import drumline.app.view.OperationView;
import drumline.app.view.Pictures;
import drumline.intake.edit.TextEdit;
import drumline.shop.layout.Layout;
import drumline.store.entry.PlanEntry;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The layouts of inquiries: shown, moved, kept, compared. */
public final class LayoutFolder {
  private final Shelves shelves;
  private final LayoutCases cases;
  private final HeadLines heads;
  private final InquiryFolder inquiries;
  private final KeptPlans plans;

  LayoutFolder(
      Shelves shelves,
      LayoutCases cases,
      HeadLines heads,
      InquiryFolder inquiries,
      KeptPlans plans) {
    this.shelves = shelves;
    this.cases = cases;
    this.heads = heads;
    this.inquiries = inquiries;
    this.plans = plans;
  }

  /** The present layout; without columns where nothing is planned yet. */
  public LayoutAnswer present(String id) {
    return present(shelves.state(id));
  }

  private LayoutAnswer present(Shelves.State state) {
    return cases
        .present(state)
        .map(one -> answer(state, one, Pictures.DRAWN))
        .orElseGet(
            () ->
                LayoutView.none(
                    frame(state, null, "none"),
                    heads.figures(state),
                    state.read().findInquiry().map(LayoutView::pins).orElse(List.of())));
  }

  /** A stored layout. */
  public LayoutAnswer stored(String id, String layoutId) {
    Shelves.State state = shelves.state(id);
    return answer(state, theCase(state, layoutId), Pictures.DRAWN);
  }

  private LayoutCase theCase(Shelves.State state, @Nullable String layoutId) {
    Optional<LayoutCase> found =
        layoutId == null
            ? cases.present(state)
            : cases.stored(state, plans.number(state, layoutId));
    return found.orElseThrow(
        () ->
            DeskRefusal.of(
                DeskRefusal.Kind.REFUSED,
                layoutId == null
                    ? "Nothing is planned yet."
                    : "The layout's machine is not in the library any more."));
  }

  private LayoutAnswer answer(Shelves.State state, LayoutCase one, Pictures pictures) {
    String state0 = one.keptLayout().origin().name().toLowerCase(java.util.Locale.ROOT);
    LaidOut laid = cases.lay(state, one);
    return new LayoutView(one.bench(), laid, Set.of())
        .answer(
            frame(state, one, one.isOutdated() ? "outdated" : state0),
            heads.triage(state, one),
            pictures);
  }

  /**
   * What moves would do, without keeping them.
   *
   * @param layoutId stored layout that they are counted from; null for the present one
   */
  public LayoutAnswer whatIf(
      String id, @Nullable String layoutId, List<Move> moves, Pictures pictures) {
    Shelves.State state = shelves.state(id);
    LayoutCase one = theCase(state, layoutId);
    LaidOut laid = one.bench().lay(moved(one, moves));
    return new LayoutView(one.bench(), laid, ids(moves))
        .answer(frame(state, one, "what-if"), heads.triage(state, one), pictures);
  }

  private static Set<String> ids(List<Move> moves) {
    return moves.stream().map(Move::operationId).collect(Collectors.toUnmodifiableSet());
  }

  private static Layout moved(LayoutCase one, List<Move> moves) {
    try {
      return new Moves(one.bench()).apply(one.layout(), moves);
    } catch (IllegalArgumentException e) {
      throw DeskRefusal.of(DeskRefusal.Kind.REFUSED, String.valueOf(e.getMessage()));
    }
  }

  /** Keeps moves on the present layout as a new revision, breaches and all. */
  public LayoutAnswer saveMoves(String id, int expectedRevision, List<Move> moves, String note) {
    Shelves.State state = shelves.state(id, expectedRevision);
    LayoutCase one = theCase(state, null);
    Layout layout = moved(one, moves);
    LaidOut laid = one.bench().lay(layout);
    KeptLayout kept = one.keptLayout().withMoved(layout);
    long layoutId = plans.keep(state, kept, laid, 0, 0);
    String what = note.isBlank() ? "moved " + String.join(", ", ids(moves)) : note;
    return present(plans.use(state, layoutId, what));
  }

  /** Makes a stored layout the present one. */
  public LayoutAnswer use(String id, String layoutId, int expectedRevision) {
    Shelves.State state = shelves.state(id, expectedRevision);
    long number = plans.number(state, layoutId);
    return present(plans.use(state, number, "layout " + layoutId));
  }

  /** Writes the pins into the inquiry's wishes, all of them. */
  public InquiryText pin(String id, int expectedRevision, List<PinAnswer> pins) {
    List<Object> list = new ArrayList<>();
    for (PinAnswer pin : pins) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("operation", pin.operationId());
      if (pin.position() != null) {
        fields.put("position", String.valueOf(pin.position()));
      }
      if (pin.slideId() != null) {
        fields.put("slide", pin.slideId());
      }
      if (pin.spindleRevPerMin() != null) {
        fields.put("speed", plain(pin.spindleRevPerMin()) + " rev/min");
      }
      list.add(fields);
    }
    TextEdit edit = new TextEdit.Put(List.of("wishes", "pins"), list);
    return inquiries.edit(id, expectedRevision, List.of(edit), "pinned");
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** Stored layouts, newest first. */
  public List<LayoutEntry> entries(String id) {
    Shelves.State state = shelves.state(id);
    List<LayoutEntry> entries = new ArrayList<>();
    for (PlanEntry plan : shelves.store().plans().list(state.entry().id())) {
      plans.entry(state, plan).ifPresent(entries::add);
    }
    return entries;
  }

  /** One operation of the present layout with every figure. */
  public OperationAnswer operation(String id, String operationId) {
    Shelves.State state = shelves.state(id);
    LayoutCase one = theCase(state, null);
    if (one.bench().route().findOperation(operationId).isEmpty()) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.MISSING, "There is no operation " + operationId + " in the route.");
    }
    return OperationView.answer(state.revision(), one.bench(), cases.lay(state, one), operationId);
  }

  private LayoutFrame frame(Shelves.State state, @Nullable LayoutCase one, String name) {
    List<drumline.shop.problem.Problem> problems =
        new ArrayList<>(state.read().opened().problems());
    if (one != null) {
      problems.addAll(one.bench().route().problems());
    }
    return new LayoutFrame(
        state.id(),
        state.revision(),
        one == null || name.equals("what-if") ? null : String.valueOf(one.layoutId()),
        name,
        one == null ? java.util.OptionalDouble.empty() : one.boundS(),
        one != null && one.isProvenOptimal() && !name.equals("what-if"),
        one == null ? 0 : one.keptLayout().wallMs(),
        one == null ? List.of() : one.notes(),
        state.read().places().of(problems),
        heads.job(state.id()));
  }
}
