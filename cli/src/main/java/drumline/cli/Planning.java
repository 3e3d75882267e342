package drumline.cli;

import drumline.app.ask.ChooseMachines;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.StudyFiles;
import drumline.app.listing.MachineListing;
import drumline.app.study.MachineStudy;
import drumline.economics.triage.Triage;
import drumline.intake.ReadResult;
import drumline.planner.api.PlannerSettings;
import drumline.sheets.content.StudyContent;
import drumline.sheets.text.StudyText;
import drumline.shop.inquiry.Inquiry;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Plans a read inquiry, shows the study and writes its files. */
final class Planning {
  private final Screen screen;
  private final PlannerSettings settings;
  private final @Nullable Path folder;

  Planning(Screen screen, PlannerSettings settings, @Nullable Path folder) {
    this.screen = screen;
    this.settings = settings;
    this.folder = folder;
  }

  /** Plans on the machines named, or those of the inquiry, or the best fit. */
  int run(ReadResult read, List<String> machineNames) throws IOException {
    Inquiry inquiry = read.inquiry().orElseThrow();
    Triage triage = Triage.of(inquiry, null);
    ChooseMachines choice = ChooseMachines.of(inquiry, machineNames, triage);
    screen.problems(choice.problems());
    if (!choice.problems().isEmpty()) {
      return ExitCodes.INPUT_WRONG;
    }
    try (Interrupt interrupt = Interrupt.listen()) {
      List<ProgressLine> lines = new ArrayList<>();
      PlanInquiry planned =
          PlanInquiry.plan(
              inquiry,
              choice.machines(),
              triage,
              read.changes(),
              settings,
              machine -> {
                ProgressLine line = new ProgressLine(screen.err(), machine.name());
                lines.add(line);
                return line;
              },
              interrupt);
      lines.forEach(ProgressLine::end);
      return show(planned);
    }
  }

  private int show(PlanInquiry planned) throws IOException {
    for (MachineStudy study : planned.studies()) {
      if (!study.isFeasible()) {
        screen.problems(study.problems());
      }
    }
    if (planned.studies().size() > 1) {
      screen.line(MachineListing.text(planned.studies()));
    }
    Optional<MachineStudy> best = planned.findBest();
    if (best.isEmpty()) {
      writeUnplanned(planned);
      return ExitCodes.NO_LAYOUT;
    }
    List<String> files = folder == null ? List.of() : StudyFiles.paths(place(planned, best.get()));
    screen.line(
        StudyText.screen(
            planned.content(best.get(), LocalDate.now(ZoneId.systemDefault()), files),
            screen.width()));
    if (folder != null) {
      write(planned);
    }
    return ExitCodes.FINE;
  }

  private void write(PlanInquiry planned) throws IOException {
    for (MachineStudy study : planned.studies()) {
      Path place = place(planned, study);
      if (study.isFeasible()) {
        StudyContent content =
            planned.content(study, LocalDate.now(ZoneId.systemDefault()), StudyFiles.paths(place));
        StudyFiles.write(place, study, content);
      } else {
        StudyFiles.writePlan(place, study);
      }
    }
  }

  private void writeUnplanned(PlanInquiry planned) throws IOException {
    if (folder != null) {
      for (MachineStudy study : planned.studies()) {
        StudyFiles.writePlan(place(planned, study), study);
      }
    }
  }

  /** The folder asked for; of several machines, a folder in it for each. */
  private Path place(PlanInquiry planned, MachineStudy study) {
    Path base = folder == null ? Path.of("") : folder;
    return planned.studies().size() > 1 ? base.resolve(study.machine().name()) : base;
  }
}
