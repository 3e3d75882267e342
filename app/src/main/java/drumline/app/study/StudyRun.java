package drumline.app.study;

import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.slack.FreeSpeeds;
import drumline.planner.slack.Levelling;
import drumline.planner.slack.SlackSpending;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.SpeedRefinement;
import drumline.planner.translate.Translation;
import drumline.planner.translate.TranslationResult;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Allowances;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Pin;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import drumline.shop.problem.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Plans one inquiry on one machine: route, layout, clock, audit, proof, money. */
public final class StudyRun {
  private final Inquiry inquiry;
  private final Machine machine;
  private final PlannerSettings settings;
  private final GripDiameters diameters;
  private final Allowances allowances = Allowances.shipped();

  private StudyRun(Inquiry inquiry, Machine machine, PlannerSettings settings) {
    this.inquiry = inquiry;
    this.machine = machine;
    this.settings = settings;
    this.diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
  }

  /**
   * The study of an inquiry on one machine.
   *
   * @throws IllegalArgumentException if the machine has no drum
   */
  public static MachineStudy study(
      Inquiry inquiry,
      Machine machine,
      PlannerSettings settings,
      ProgressListener listener,
      Cancel cancel) {
    return new StudyRun(inquiry, machine, settings).run(listener, cancel);
  }

  private MachineStudy run(ProgressListener listener, Cancel cancel) {
    Route derived =
        MachineRoute.adapt(
            RouteDerivation.derive(inquiry, allowances), machine, inquiry, allowances);
    List<Problem> problems = new ArrayList<>(derived.problems());
    if (hasErrors(problems)) {
      return MachineStudy.unplanned(inquiry, machine, derived, problems);
    }
    LongestCut longest = new LongestCut(this::translate);
    Route route = longest.divide(derived);
    TranslationResult translated = translate(route);
    problems.addAll(translated.problems());
    if (translated.translation().isEmpty()) {
      return MachineStudy.unplanned(inquiry, machine, route, problems);
    }
    Translation translation = translated.translation().orElseThrow();
    PlanningResult result = Planner.plan(translation.problem(), settings, listener, cancel);
    List<String> notes = new ArrayList<>(translation.notes());
    longest.divided().forEach(text -> notes.add("Divided so that it does not govern: " + text));
    if (result instanceof PlanningResult.Planned planned) {
      notes.addAll(planned.notes());
      return planned(route, translation, planned, problems, notes);
    }
    problems.addAll(reasons(result));
    return MachineStudy.unplanned(inquiry, machine, route, problems);
  }

  private MachineStudy planned(
      Route route,
      Translation translation,
      PlanningResult.Planned planned,
      List<Problem> problems,
      List<String> notes) {
    Set<String> pinned =
        inquiry.wishes().pins().stream()
            .filter(pin -> pin.spindleRevPerMin().isPresent())
            .map(Pin::operationId)
            .collect(Collectors.toUnmodifiableSet());
    LayoutBench bench = new LayoutBench(inquiry, machine, route, allowances);
    CycleClock clock = bench.clock();
    Layout fastest =
        SpeedRefinement.refine(
            route, machine, diameters, translation.layout(planned.layout()), pinned);
    Layout level = Levelling.level(translation.problem(), clock, fastest, pinnedAnywhere());
    Layout slowed =
        SlackSpending.spend(route, machine, clock, level, new EdgeCost(inquiry, machine), pinned);
    LaidOut laid = bench.lay(FreeSpeeds.settle(route, clock, slowed));
    SearchResult search =
        new SearchResult(
            Translation.boundS(planned.lowerBoundMs(), laid.timeline().cycleS()),
            planned.isProvenOptimal(),
            planned.elapsedMs(),
            notes);
    return MachineStudy.planned(
        inquiry, machine, route, PlannedLayout.of(bench, laid, search), problems);
  }

  private Set<String> pinnedAnywhere() {
    return inquiry.wishes().pins().stream()
        .map(Pin::operationId)
        .collect(Collectors.toUnmodifiableSet());
  }

  private TranslationResult translate(Route route) {
    return RouteTranslator.translate(
        route, machine, inquiry.part(), inquiry.bar(), inquiry.wishes().pins());
  }

  private static boolean hasErrors(List<Problem> problems) {
    return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
  }

  private List<Problem> reasons(PlanningResult result) {
    List<String> words =
        result instanceof PlanningResult.Infeasible none
            ? none.conflicts()
            : ((PlanningResult.Undecided) result).notes();
    String found = words.isEmpty() ? "no layout found in the time given" : String.join("; ", words);
    String code = result instanceof PlanningResult.Infeasible ? "no-layout" : "undecided";
    return List.of(
        Problem.error(
            code,
            machine.name(),
            found,
            "a layout that keeps every rule",
            "Maybe another machine, one of these rules less, or more time with --seconds."));
  }
}
