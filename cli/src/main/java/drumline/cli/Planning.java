package drumline.cli;

import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.study.MachineStudy;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Interrupt;
import drumline.cli.screen.ProgressLine;
import drumline.cli.screen.Screen;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Plans an opened inquiry, shows the study and writes its files. */
final class Planning {
  private static final double LEAST_ADVICE_S = 0.5;
  private static final double ADVICE_SHARE = 5;

  private final Screen screen;
  private final double searchS;
  private final int seed;
  private final @Nullable Path folder;
  private boolean advises;

  Planning(Screen screen, double searchS, int seed, @Nullable Path folder) {
    this.screen = screen;
    this.searchS = searchS;
    this.seed = seed;
    this.folder = folder;
  }

  /** The same, and says what would shorten the cycle. */
  Planning withAdvice(boolean wanted) {
    advises = wanted;
    return this;
  }

  /** Plans on the machines named, or those of the inquiry, or the best fit. */
  int run(Opened opened, List<String> machineNames) throws IOException {
    try (Interrupt interrupt = Interrupt.listen()) {
      ProgressLine line = new ProgressLine(screen.err(), interrupt);
      PlanInquiry planned = PlanInquiry.plan(opened, machineNames, searchS, seed, line);
      if (advises && planned.problems().isEmpty()) {
        planned = planned.advised(Math.max(LEAST_ADVICE_S, searchS / ADVICE_SHARE), line);
      }
      line.end();
      screen.problems(planned.problems());
      return planned.problems().isEmpty() ? show(planned) : ExitCodes.INPUT_WRONG;
    }
  }

  private int show(PlanInquiry planned) throws IOException {
    for (MachineStudy study : planned.studies()) {
      if (!study.isFeasible()) {
        screen.problems(study.problems());
      }
    }
    if (planned.studies().size() > 1) {
      screen.line(planned.sideBySide());
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    Optional<String> shown = planned.deliver(Optional.ofNullable(folder), today, screen.width());
    shown.ifPresent(screen::line);
    if (advises && shown.isPresent()) {
      screen.line(planned.shorteningText());
    }
    return shown.isPresent() ? ExitCodes.FINE : ExitCodes.NO_LAYOUT;
  }
}
