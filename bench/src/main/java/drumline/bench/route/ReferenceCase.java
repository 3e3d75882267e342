package drumline.bench.route;

import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import drumline.planner.api.PlainModel;
import drumline.planner.model.PlanningProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reference routes, the small ones against a plain constraint model in the same run. */
public final class ReferenceCase implements BenchCase {
  private static final double PLAIN_S = 300;
  private static final int BEST_KNOWN_LARGE_MS = 10_251;

  @Override
  public String name() {
    return "reference";
  }

  @Override
  public List<Measured> run(Sample sample) {
    Planning.run(ReferenceFile.read("route-8p-x1-t3.json"), 1, 2); // compiles the code in use
    List<Measured> lines = new ArrayList<>();
    lines.add(small("route-6p-x1-t3.json", 10_462, sample));
    lines.add(small("route-8p-x1-t3.json", 7_971, sample));
    lines.add(large(sample));
    return lines;
  }

  private static Measured small(String file, int optimumMs, Sample sample) {
    PlanningProblem problem = ReferenceFile.read(file);
    double plainS = plainS(problem, optimumMs);
    Planning planned = Planning.run(problem, sample.searchS(), 1);
    return new Measured(
        file,
        String.format(
            Locale.ROOT,
            "%d ms%s in %.2f s",
            planned.cycleMs(),
            planned.isProven() ? " proven" : "",
            planned.tookS()),
        String.format(
            Locale.ROOT, "%.3f of the plain model's %.1f s", planned.tookS() / plainS, plainS),
        "optimum " + optimumMs + " proven in 1/5 of the plain model's time",
        planned.cycleMs() == optimumMs && planned.isProven() && planned.tookS() <= plainS / 5);
  }

  /** Time of the rules alone, from nothing, to a proven optimum. */
  private static double plainS(PlanningProblem problem, int optimumMs) {
    long start = System.nanoTime();
    int boundMs = PlainModel.lowerBoundMs(problem, PLAIN_S);
    if (boundMs != optimumMs) {
      System.err.println("the plain model did not finish: bound " + boundMs);
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static Measured large(Sample sample) {
    PlanningProblem problem = ReferenceFile.read("route-8p-x3-t3.json");
    Planning planned = Planning.run(problem, sample.searchS(), 1);
    return new Measured(
        "route-8p-x3-t3.json",
        String.format(Locale.ROOT, "%d ms in %.1f s", planned.cycleMs(), planned.tookS()),
        String.format(Locale.ROOT, "gap %.1f %%", planned.gapPct()),
        "10251 ms or better, gap <= 4 % in 30 s",
        planned.cycleMs() <= BEST_KNOWN_LARGE_MS && planned.gapPct() <= 4);
  }
}
