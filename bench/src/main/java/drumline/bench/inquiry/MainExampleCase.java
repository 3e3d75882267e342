package drumline.bench.inquiry;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The main example, whole model: first layout, how soon it is good, and how far it is proven. */
public final class MainExampleCase implements BenchCase {
  private static final String EXAMPLE = "valve-seat-body.yaml";
  private static final double FIRST_LAYOUT_S = 0.3;
  private static final double NEAR_S = 3;
  private static final double NEAR_RATIO = 1.01;
  private static final double GAP_PCT = 2;
  private static final double GAP_S = 15;

  @Override
  public String name() {
    return "main-example";
  }

  /** A step of a search, on the clock from its start. */
  private record Step(double atS, double bestS, double boundS) {}

  @Override
  public List<Measured> run(Sample sample) {
    Opened opened = OpenInquiry.example(EXAMPLE);
    plan(opened, 1); // loads classes and the solver
    List<Step> steps = plan(opened, sample.searchS());
    double bestS = steps.get(steps.size() - 1).bestS();
    double firstS = when(steps, step -> step.bestS() < Double.POSITIVE_INFINITY);
    double nearS = when(steps, step -> step.bestS() <= NEAR_RATIO * bestS);
    double gapS = when(steps, step -> gapPct(step) <= GAP_PCT);
    Step last = steps.get(steps.size() - 1);
    return List.of(
        line("main example, first layout", firstS, "< 0.3 s", firstS < FIRST_LAYOUT_S),
        line("main example, within 1 % of the best", nearS, "< 3 s", nearS < NEAR_S),
        new Measured(
            "main example, gap to 2 %",
            String.format(Locale.ROOT, "%.2f s", gapS),
            String.format(Locale.ROOT, "%.3f s, gap %.2f %%", bestS, gapPct(last)),
            "< 15 s",
            gapS < GAP_S));
  }

  private static double gapPct(Step step) {
    return 100 * (step.bestS() - step.boundS()) / step.bestS();
  }

  private static double when(List<Step> steps, java.util.function.Predicate<Step> reached) {
    return steps.stream()
        .filter(reached)
        .mapToDouble(Step::atS)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Measured line(String name, double atS, String bar, boolean isMet) {
    return Measured.of(name, String.format(Locale.ROOT, "%.2f s", atS), bar, isMet);
  }

  private static List<Step> plan(Opened opened, double searchS) {
    List<Step> steps = new ArrayList<>();
    PlanInquiry.plan(
        opened,
        List.of(),
        searchS,
        1,
        new SearchWatch() {
          @Override
          public void progress(
              String machineName, double elapsedS, OptionalDouble bestS, double boundS) {
            steps.add(new Step(elapsedS, bestS.orElse(Double.POSITIVE_INFINITY), boundS));
          }

          @Override
          public boolean isCancelled() {
            return false;
          }
        });
    return steps;
  }
}
