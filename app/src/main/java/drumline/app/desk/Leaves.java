package drumline.app.desk;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.PlacedProblem;
import drumline.app.answer.money.MoneyAnswer;
import drumline.app.answer.sheet.PrintAnswer;
import drumline.app.answer.sheet.RouteAnswer;
import drumline.app.answer.sheet.RunOffAnswer;
import drumline.app.answer.sheet.TriageAnswer;
import drumline.app.layout.FittedRoute;
import drumline.app.shelf.KeptText;
import drumline.app.shelf.LayoutCase;
import drumline.app.shelf.LayoutCases;
import drumline.app.shelf.ReadText;
import drumline.app.shelf.Shelves;
import drumline.app.view.MoneyView;
import drumline.app.view.PrintView;
import drumline.app.view.RouteView;
import drumline.app.view.TriageView;
import drumline.drawing.DrawingUnits;
import drumline.route.RouteDerivation;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The leaves of an inquiry, each answering one question. */
public final class Leaves {
  private static final int LOOK_BACK = 50;

  private final Shelves shelves;
  private final LayoutCases cases;

  Leaves(Shelves shelves, LayoutCases cases) {
    this.shelves = shelves;
    this.cases = cases;
  }

  /**
   * What is the piece?
   *
   * @param units metric or inch; empty for those of the text
   */
  public PrintAnswer print(String id, Optional<String> units) {
    Shelves.State state = shelves.state(id);
    DrawingUnits wanted = units.map(Leaves::units).orElse(state.read().units());
    PrintView view = new PrintView(state.read().opened().read(), tree(state.read()));
    for (int revision = state.revision(); revision > lastLookedAt(state); revision--) {
      Optional<Inquiry> drawable = inquiryAt(state, revision);
      if (drawable.isPresent()) {
        String svg = view.svg(drawable.get(), wanted);
        return view.answer(state.revision(), svg, revision, wanted);
      }
    }
    return view.answer(state.revision(), null, null, wanted);
  }

  private static DrawingUnits units(String word) {
    return switch (word) {
      case "metric" -> DrawingUnits.METRIC;
      case "inch" -> DrawingUnits.INCH;
      default ->
          throw DeskRefusal.of(
              DeskRefusal.Kind.REFUSED, "units: " + word + ", allowed: metric, inch");
    };
  }

  private static int lastLookedAt(Shelves.State state) {
    return Math.max(0, state.revision() - LOOK_BACK);
  }

  private Optional<Inquiry> inquiryAt(Shelves.State state, int revision) {
    if (revision == state.revision()) {
      return state.read().findInquiry();
    }
    String kept = shelves.store().inquiries().revision(state.entry().id(), revision).text();
    return shelves.read(KeptText.of(kept).text()).findInquiry();
  }

  private static @Nullable Map<String, Object> tree(ReadText read) {
    return read.tree().orElse(null);
  }

  /** Does the piece belong on a multi-spindle, and on which? */
  public TriageAnswer triage(String id) {
    Shelves.State state = shelves.state(id);
    List<PlacedProblem> problems = problems(state, List.of());
    return state
        .read()
        .findInquiry()
        .map(
            inquiry ->
                TriageView.answer(state.revision(), inquiry, state.read().triage(), problems))
        .orElseGet(
            () -> new TriageAnswer(state.revision(), null, null, List.of(), List.of(), problems));
  }

  /**
   * What must be done?
   *
   * @param machineName machine to adapt the route to; empty for that of the present layout, else
   *     the first of the wishes
   */
  public RouteAnswer route(String id, Optional<String> machineName) {
    Shelves.State state = shelves.state(id);
    Optional<Inquiry> inquiry = state.read().findInquiry();
    if (inquiry.isEmpty()) {
      return new RouteAnswer(
          state.revision(),
          null,
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          problems(state, List.of()));
    }
    Optional<LayoutCase> present =
        cases
            .present(state)
            .filter(c -> machineName.isEmpty() || machineName.get().equals(name(c)));
    Optional<String> wanted =
        machineName.or(() -> present.map(Leaves::name)).or(() -> wished(inquiry.get()));
    Route route =
        present.isPresent()
            ? present.get().bench().route()
            : derived(inquiry.get(), wanted.map(n -> machine(inquiry.get(), n)));
    return RouteView.answer(
        state.revision(),
        wanted.orElse(null),
        route,
        present.map(LayoutCase::layout),
        words(state),
        problems(state, route.problems()));
  }

  private static String name(LayoutCase one) {
    return one.bench().machine().name();
  }

  private static Optional<String> wished(Inquiry inquiry) {
    return inquiry.wishes().machines().stream()
        .filter(n -> inquiry.machines().stream().anyMatch(m -> m.name().equals(n)))
        .findFirst();
  }

  private static Machine machine(Inquiry inquiry, String name) {
    return inquiry.machines().stream()
        .filter(machine -> machine.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                DeskRefusal.of(
                    DeskRefusal.Kind.REFUSED,
                    "machine: "
                        + name
                        + ", allowed: "
                        + String.join(
                            ", ", inquiry.machines().stream().map(Machine::name).toList())));
  }

  private Route derived(Inquiry inquiry, Optional<Machine> machine) {
    return machine
        .map(m -> FittedRoute.of(inquiry, m))
        .orElseGet(() -> RouteDerivation.derive(inquiry));
  }

  /** What each element is, in the order of the print. */
  private static Map<String, String> words(Shelves.State state) {
    PrintView view = new PrintView(state.read().opened().read(), tree(state.read()));
    Map<String, String> words = new LinkedHashMap<>();
    view.answer(state.revision(), null, null, state.read().units())
        .elements()
        .forEach(element -> words.put(element.id(), element.words()));
    return words;
  }

  /** What does it cost, against what? */
  public MoneyAnswer money(String id) {
    Shelves.State state = shelves.state(id);
    List<PlacedProblem> problems = problems(state, List.of());
    return cases
        .present(state)
        .flatMap(one -> one.study(cases.lay(state, one)))
        .map(
            study ->
                new MoneyAnswer(
                    state.revision(),
                    new MoneyView(study, new OtherStudies(shelves, cases).of(state, study))
                        .figures(),
                    problems))
        .orElseGet(() -> new MoneyAnswer(state.revision(), null, problems));
  }

  /** Does it hold? */
  public RunOffAnswer runOff(String id) {
    return new RunOffAnswer(
        shelves.state(id).revision(), "missing", "Run-offs cannot be judged yet.");
  }

  private static List<PlacedProblem> problems(
      Shelves.State state, List<drumline.shop.problem.Problem> more) {
    Set<drumline.shop.problem.Problem> seen = new HashSet<>();
    List<drumline.shop.problem.Problem> all = new ArrayList<>();
    all.addAll(state.read().opened().problems());
    all.addAll(more);
    all.removeIf(problem -> !seen.add(problem));
    return state.read().places().of(all);
  }
}
