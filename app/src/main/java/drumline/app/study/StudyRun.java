package drumline.app.study;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.PlannedCase;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.check.TimelineAudit;
import drumline.planner.translate.Translation;
import drumline.planner.translate.TranslationResult;
import drumline.route.feature.TurnedPart;
import drumline.route.rule.Practice;
import drumline.route.rule.PracticeReading;
import drumline.shape.proof.RemovalProof;
import drumline.shape.section.PartSection;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans one inquiry on one machine: route, layout, clock, audit, proof, money. */
public final class StudyRun {
  private final Inquiry inquiry;
  private final Machine machine;
  private final PlannerSettings settings;
  private final GripDiameters diameters;
  private final Practice practice;

  private StudyRun(Inquiry inquiry, Machine machine, PlannerSettings settings) {
    this.inquiry = inquiry;
    this.machine = machine;
    this.settings = settings;
    this.practice = PracticeReading.of(inquiry.overrides()).practice();
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
          divided(divided.whole(), route, translation, planned, problems, notes, listener, cancel);
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
      Route whole,
      Route route,
      Translation translation,
      PlanningResult.Planned before,
      List<Problem> problems,
      List<String> notes,
      ProgressListener listener,
      Cancel cancel) {
    Optional<GoverningCut.Division> division =
        new GoverningCut(whole, this::translate, settings, cancel)
            .find(route, translation.problem(), before);
    if (division.isEmpty()) {
      return Optional.empty();
    }
    Route parts = division.get().route();
    Translation again = translate(parts).translation().orElseThrow();
    PlanningResult result = Planner.plan(again.problem(), settings, listener, cancel);
    if (result instanceof PlanningResult.Planned planned && planned.cycleMs() < before.cycleMs()) {
      notes.add("Divided since planning again showed a shorter cycle: " + division.get().words());
      notes.addAll(planned.notes());
      return Optional.of(planned(parts, again, planned, problems, notes));
    }
    return Optional.empty();
  }

  private MachineStudy planned(
      DividedRoute divided,
      Translation translation,
      PlanningResult.Planned planned,
      List<Problem> problems,
      List<String> notes) {
    drumline.planner.model.Layout cheapest =
        Planner.cheapest(translation.problem(), planned.layout(), settings);
    SpentSlack spent = SpentSlack.of(inquiry, machine, divided.route(), translation, cheapest);
    Route route = spent.route();
    Layout layout = spent.layout();
    CycleClock clock = new CycleClock(route, machine, diameters);
    Timeline timeline = clock.timeline(layout);
    Part turned = TurnedPart.of(inquiry, practice);
    WorkpieceStates states =
        WorkpieceStates.of(inquiry.bar(), turned, PositionWork.ofLayout(route, machine, layout));
    MoneyStudy money =
        MoneyStudy.of(
            PlannedCase.of(
                inquiry, machine, route, layout, timeline, partVolumeMm3(), Assumptions.usual()));
    PlannedLayout plan =
        new PlannedLayout(
            layout,
            timeline,
            Translation.boundS(planned.lowerBoundMs(), timeline.cycleS()),
            planned.isProvenOptimal(),
            planned.elapsedMs(),
            TimelineAudit.audit(route, machine, diameters, layout, timeline),
            states,
            RemovalProof.of(
                inquiry.bar(), turned, states, RemovalProof.USUAL_IGNORED_UM, pointAngleDeg(route)),
            money,
            new RangeRun(inquiry, machine, practice, divided::divide, SpentSlack.pinnedSpeeds(inquiry))
                .find(route, layout, timeline, partVolumeMm3()),
            notes);
    return MachineStudy.planned(inquiry, machine, route, plan, problems);
  }

  /** Point angle of the route's drills; a drilled end takes the shape of its drill. */
  private static double pointAngleDeg(Route route) {
    return route.operations().stream()
        .filter(operation -> operation.kind() == OperationKind.DRILL)
        .mapToDouble(operation -> operation.tool().family().leadAngleDeg())
        .findFirst()
        .orElse(PartSection.USUAL_POINT_ANGLE_DEG);
  }

  private double partVolumeMm3() {
    return PartSection.of(inquiry.part(), inquiry.bar()).piece().volumeMm3();
  }

  private TranslationResult translate(Route route) {
    return DividedRoute.translate(inquiry, machine, route);
  }
}
