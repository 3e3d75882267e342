package drumline.app.study;

import drumline.app.divide.DividedRoute;
import drumline.app.divide.GoverningCut;
import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.range.CuttingRange;
import drumline.app.range.RangeRun;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.Layout;
import drumline.planner.translate.Translation;
import drumline.planner.translate.TranslationResult;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans one inquiry on one machine: route, layout, clock, audit, proof, money. */
public final class StudyRun {
  private final Inquiry inquiry;
  private final Machine machine;
  private final PlannerSettings settings;

  private StudyRun(Inquiry inquiry, Machine machine, PlannerSettings settings) {
    this.inquiry = inquiry;
    this.machine = machine;
    this.settings = settings;
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
    DividedRoute divided = DividedRoute.of(inquiry, machine);
    List<Problem> problems = new ArrayList<>(divided.whole().problems());
    if (divided.isWrong()) {
      return MachineStudy.unplanned(inquiry, machine, divided.whole(), problems);
    }
    Route route = divided.route();
    TranslationResult translated = translate(route);
    problems.addAll(translated.problems());
    if (translated.translation().isEmpty()) {
      return MachineStudy.unplanned(inquiry, machine, route, problems);
    }
    Translation translation = translated.translation().orElseThrow();
    PlanningResult result = Planner.plan(translation.problem(), settings, listener, cancel);
    List<String> notes = new ArrayList<>(translation.notes());
    divided.divided().forEach(text -> notes.add("Divided so that it does not govern: " + text));
    if (result instanceof PlanningResult.Planned planned) {
      Optional<MachineStudy> shorter =
          divided(divided, translation, planned, problems, notes, listener, cancel);
      if (shorter.isPresent()) {
        return shorter.orElseThrow();
      }
      notes.addAll(planned.notes());
      return planned(divided, translation, planned, problems, notes);
    }
    problems.add(NoLayout.of(machine, result));
    return MachineStudy.unplanned(inquiry, machine, route, problems);
  }

  /** The study of the route with what governs divided, if that makes the cycle shorter. */
  private Optional<MachineStudy> divided(
      DividedRoute divided,
      Translation translation,
      PlanningResult.Planned before,
      List<Problem> problems,
      List<String> notes,
      ProgressListener listener,
      Cancel cancel) {
    Optional<GoverningCut.Division> division =
        new GoverningCut(divided.whole(), this::translate, settings, cancel)
            .find(divided.route(), translation.problem(), before);
    if (division.isEmpty()) {
      return Optional.empty();
    }
    DividedRoute more = divided.with(division.get());
    Translation again = translate(more.route()).translation().orElseThrow();
    PlanningResult result = Planner.plan(again.problem(), settings, listener, cancel);
    if (result instanceof PlanningResult.Planned planned && planned.cycleMs() < before.cycleMs()) {
      notes.add("Divided since planning again showed a shorter cycle: " + division.get().words());
      notes.addAll(planned.notes());
      return Optional.of(planned(more, again, planned, problems, notes));
    }
    return Optional.empty();
  }

  private MachineStudy planned(
      DividedRoute divided,
      Translation translation,
      PlanningResult.Planned planned,
      List<Problem> problems,
      List<String> notes) {
    Layout cheapest = Planner.cheapest(translation.problem(), planned.layout(), settings);
    SpentSlack spent = SpentSlack.of(inquiry, machine, divided.route(), translation, cheapest);
    LayoutBench bench = new LayoutBench(inquiry, machine, spent.route());
    LaidOut laid = bench.lay(spent.layout());
    SearchResult search =
        new SearchResult(
            Translation.boundS(planned.lowerBoundMs(), laid.timeline().cycleS()),
            planned.isProvenOptimal(),
            planned.elapsedMs(),
            notes);
    Optional<CuttingRange> range =
        new RangeRun(inquiry, machine, divided::divide, SpentSlack.pinnedSpeeds(inquiry))
            .find(spent.route(), laid);
    return MachineStudy.planned(
        inquiry, machine, spent.route(), PlannedLayout.of(bench, laid, search, range), problems);
  }

  private TranslationResult translate(Route route) {
    return DividedRoute.translate(inquiry, machine, route);
  }
}
