package drumline.app.ask;

import drumline.app.listing.MachineListing;
import drumline.app.replan.Shortening;
import drumline.app.replan.Shortenings;
import drumline.app.report.StudyReport;
import drumline.app.study.MachineStudy;
import drumline.app.study.SideBySide;
import drumline.economics.triage.Triage;
import drumline.intake.library.LibraryChange;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.ProgressListener;
import drumline.sheets.content.StudyContent;
import drumline.sheets.text.StudyText;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An inquiry planned on one or several machines.
 *
 * @param studies one for each machine, in the order asked
 * @param triage whether the piece belongs on a multi-spindle
 * @param changes figures of the user's own
 * @param problems machines that are not there, or have no drum
 * @param shortenings what would shorten the best study's cycle; empty unless it was asked for
 */
public record PlanInquiry(
    List<MachineStudy> studies,
    Triage triage,
    List<LibraryChange> changes,
    List<Problem> problems,
    List<Shortening> shortenings) {
  private static final int WORKER_COUNT = 2;

  /** Copies the lists. */
  public PlanInquiry {
    studies = List.copyOf(studies);
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
    shortenings = List.copyOf(shortenings);
  }

  /**
   * Plans on the machines named, else those of the inquiry's wishes, else the best fit.
   *
   * @param searchS effort of the search for each machine, above 0 to 3600
   * @param seed random seed, 0 or more: the same seed and effort give the same layout
   * @throws IllegalArgumentException if effort or seed are outside their range
   * @throws IllegalStateException if the inquiry has errors
   */
  public static PlanInquiry plan(
      Opened opened, List<String> machineNames, double searchS, int seed, SearchWatch watch) {
    Inquiry inquiry = opened.inquiry();
    Triage triage = Triage.of(inquiry, null);
    ChooseMachines choice = ChooseMachines.of(inquiry, machineNames, triage);
    PlannerSettings settings = new PlannerSettings(searchS, WORKER_COUNT, seed);
    List<MachineStudy> studies = new ArrayList<>();
    if (choice.problems().isEmpty()) {
      SideBySide side =
          new SideBySide(
              inquiry, settings, machine -> listener(machine, watch), watch::isCancelled);
      studies.addAll(
          machineNames.contains(ChooseMachines.ALL)
              ? side.planPromising(choice.machines())
              : side.planAll(choice.machines()));
    }
    return new PlanInquiry(studies, triage, opened.changes(), choice.problems(), List.of());
  }

  /**
   * The same with what would shorten the best study's cycle, each change planned again.
   *
   * @param searchS effort for each change, above 0
   */
  public PlanInquiry advised(double searchS, SearchWatch watch) {
    PlannerSettings each = new PlannerSettings(searchS, WORKER_COUNT, 1);
    List<Shortening> found =
        findBest().map(study -> Shortenings.of(study, each, watch::isCancelled)).orElse(List.of());
    return new PlanInquiry(studies, triage, changes, problems, found);
  }

  /** What would shorten the cycle, one change a line. */
  public String shorteningText() {
    if (shortenings.isEmpty()) {
      return "No single change that was tried shortens the cycle.";
    }
    StringBuilder text = new StringBuilder("What would shorten the cycle, each change alone:");
    for (Shortening one : shortenings) {
      text.append(String.format(Locale.ROOT, "%n  %6.2f s  %s", one.gainS(), one.words()));
    }
    return text.toString();
  }

  private static ProgressListener listener(Machine machine, SearchWatch watch) {
    return step ->
        watch.progress(
            machine.name(),
            step.elapsedMs() / 1000.0,
            step.best()
                .map(layout -> OptionalDouble.of(layout.cycleMs() / 1000.0))
                .orElseGet(OptionalDouble::empty),
            step.lowerBoundMs() / 1000.0);
  }

  /** The study with the cheapest piece, if any has a layout. */
  public Optional<MachineStudy> findBest() {
    return studies.stream()
        .filter(MachineStudy::isFeasible)
        .min(Comparator.comparing(study -> study.plan().orElseThrow().money().cost().total()));
  }

  /** The machines side by side, one line each. */
  public String sideBySide() {
    return MachineListing.text(studies);
  }

  /**
   * Writes the files of all studies, of several machines each into a folder of its name, and gives
   * the best study back on one terminal screen; nothing but the files where no study has a layout.
   *
   * @param folder where the files go, if they are wanted
   * @param width columns of the terminal, at least 60
   * @throws IOException if a folder cannot be made or a file not written
   */
  public Optional<String> deliver(Optional<Path> folder, LocalDate date, int width)
      throws IOException {
    Optional<MachineStudy> best = findBest();
    Optional<String> screen = Optional.empty();
    for (MachineStudy study : studies) {
      boolean shown = best.isPresent() && study.equals(best.get());
      if (study.isFeasible() && (shown || folder.isPresent())) {
        List<String> files =
            folder.map(base -> StudyFiles.paths(place(base, study), study)).orElse(List.of());
        StudyContent content = content(study, date, files);
        if (folder.isPresent()) {
          StudyFiles.write(place(folder.get(), study), study, content);
        }
        if (shown) {
          screen = Optional.of(StudyText.screen(content, width));
        }
      } else if (folder.isPresent()) {
        StudyFiles.writePlan(place(folder.get(), study), study);
      }
    }
    return screen;
  }

  private StudyContent content(MachineStudy study, LocalDate date, List<String> files) {
    List<MachineStudy> others = studies.stream().filter(other -> !other.equals(study)).toList();
    return StudyReport.content(
        study, others, isBest(study) ? shortenings : List.of(), triage, changes, date, files);
  }

  private boolean isBest(MachineStudy study) {
    return findBest().map(study::equals).orElse(false);
  }

  private Path place(Path folder, MachineStudy study) {
    return studies.size() > 1 ? folder.resolve(study.machine().name()) : folder;
  }
}
