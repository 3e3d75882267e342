package drumline.bench.inquiry;

import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.study.MachineStudy;
import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import drumline.bench.measure.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Many generated inquiries in one process: nothing fails, every audit passes, memory stays flat.
 */
public final class SoakCase implements BenchCase {
  private static final int INQUIRIES = 500;
  private static final int MEMORY_EVERY = 10;
  private static final double MB = 1024 * 1024;
  private static final double MOST_GROWTH_RATIO = 1.2;

  @Override
  public String name() {
    return "soak";
  }

  @Override
  public List<Measured> run(Sample sample) {
    int count = Math.min(INQUIRIES, sample.mostCount());
    List<Double> memoryMb = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    int planned = 0;
    int unplanned = 0;
    int bad = 0;
    for (int seed = 1; seed <= count; seed++) {
      long start = System.nanoTime();
      Opened opened = OpenGenerated.open(seed, 2 + seed % 6);
      if (opened.isWrong()) {
        System.err.println("seed " + seed + ": " + opened.problems());
        bad++;
        continue;
      }
      PlanInquiry plan =
          PlanInquiry.plan(opened, List.of(), sample.searchS(), 1, SearchWatch.silent());
      for (MachineStudy study : plan.studies()) {
        if (study.plan().isEmpty()) {
          unplanned++;
        } else if (study.plan().get().audit().findings().stream().allMatch(f -> f.isPassed())) {
          planned++;
        } else {
          System.err.println("seed " + seed + ": the audit finds a breach");
          bad++;
        }
      }
      times.add((System.nanoTime() - start) / 1e9);
      if (seed % MEMORY_EVERY == 0) {
        memoryMb.add(usedMb());
      }
    }
    return List.of(line(count, planned, unplanned, bad, new Spread(times), memoryMb));
  }

  private static Measured line(
      int count, int planned, int unplanned, int bad, Spread times, List<Double> memoryMb) {
    int third = Math.max(1, memoryMb.size() / 3);
    double early = new Spread(memoryMb.subList(0, third)).median();
    double late = new Spread(memoryMb.subList(memoryMb.size() - third, memoryMb.size())).median();
    return new Measured(
        "soak of " + count + " generated inquiries",
        String.format(
            Locale.ROOT,
            "%.2f s each; %d planned, %d without a layout, %d bad",
            times.median(),
            planned,
            unplanned,
            bad),
        String.format(Locale.ROOT, "heap %.0f MB early, %.0f MB late", early, late),
        "none bad, heap late <= 1.2 of early",
        bad == 0 && late <= MOST_GROWTH_RATIO * early);
  }

  private static double usedMb() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / MB;
  }
}
