package drumline.planner.translate;

import drumline.shop.machine.Machine;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Whether bar and piece go through the machine at all. */
final class WorkFit {
  private WorkFit() {}

  static List<Problem> problems(Machine machine, Part part, Bar bar) {
    List<Problem> problems = new ArrayList<>();
    double capacityMm = machine.barFeed().capacityMm();
    if (bar.acrossCornersMm() > capacityMm) {
      problems.add(
          Problem.error(
              "bar-too-large",
              "bar",
              mm(bar.acrossCornersMm()) + " across",
              "up to " + mm(capacityMm) + " on " + machine.name(),
              "Maybe a larger machine."));
    }
    if (part.lengthMm() > machine.maxPieceLengthMm()) {
      problems.add(
          Problem.error(
              "piece-too-long",
              "part " + part.name(),
              mm(part.lengthMm()),
              "up to " + mm(machine.maxPieceLengthMm()) + " on " + machine.name(),
              "Maybe another machine."));
    }
    if (bar.lengthMm() > machine.barFeed().barLengthMm()) {
      problems.add(
          Problem.warning(
              "bar-too-long",
              "bar",
              mm(bar.lengthMm()),
              "up to " + mm(machine.barFeed().barLengthMm()) + " on " + machine.name(),
              "Maybe bars are cut before they are loaded."));
    }
    return problems;
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f mm", value);
  }
}
