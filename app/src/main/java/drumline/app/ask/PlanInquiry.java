package drumline.app.ask;

import drumline.app.report.StudyReport;
import drumline.app.study.MachineStudy;
import drumline.app.study.StudyRun;
import drumline.economics.triage.Triage;
import drumline.intake.library.LibraryChange;
import drumline.planner.api.Cancel;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.ProgressListener;
import drumline.sheets.content.StudyContent;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * An inquiry planned on one or several machines.
 *
 * @param studies one for each machine, in the order asked
 * @param triage whether the piece belongs on a multi-spindle
 * @param changes figures of the user's own
 */
public record PlanInquiry(List<MachineStudy> studies, Triage triage, List<LibraryChange> changes) {

  /** Copies the lists. */
  public PlanInquiry {
    studies = List.copyOf(studies);
    changes = List.copyOf(changes);
  }

  /**
   * Plans on each machine in turn.
   *
   * @param listener told of progress, for each machine
   */
  public static PlanInquiry plan(
      Inquiry inquiry,
      List<Machine> machines,
      Triage triage,
      List<LibraryChange> changes,
      PlannerSettings settings,
      Function<Machine, ProgressListener> listener,
      Cancel cancel) {
    List<MachineStudy> studies = new ArrayList<>();
    for (Machine machine : machines) {
      studies.add(StudyRun.study(inquiry, machine, settings, listener.apply(machine), cancel));
    }
    return new PlanInquiry(studies, triage, changes);
  }

  /** The study with the cheapest piece, if any has a layout. */
  public Optional<MachineStudy> findBest() {
    return studies.stream()
        .filter(MachineStudy::isFeasible)
        .min(Comparator.comparing(study -> study.plan().orElseThrow().money().cost().total()));
  }

  /**
   * What the sheets of one of the studies say, the others beside it.
   *
   * @throws IllegalArgumentException if the study has no layout
   */
  public StudyContent content(MachineStudy study, LocalDate date, List<String> files) {
    List<MachineStudy> others = studies.stream().filter(other -> !other.equals(study)).toList();
    return StudyReport.content(study, others, triage, changes, date, files);
  }
}
