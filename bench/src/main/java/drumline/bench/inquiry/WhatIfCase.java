package drumline.bench.inquiry;

import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/** Re-evaluation of a layout of about forty operations. */
public final class WhatIfCase implements BenchCase {
  private static final double EVALUATED_MS = 1;
  private static final double WHAT_IF_P99_MS = 2;

  @Override
  public String name() {
    return "what-if";
  }

  @Override
  public List<Measured> run(Sample sample) {
    TimeValue each = TimeValue.milliseconds((long) (1000 * Math.min(5, sample.searchS())));
    try {
      List<Measured> lines = new ArrayList<>();
      for (RunResult result :
          new Runner(
                  new OptionsBuilder()
                      .include(WhatIfBenchmark.class.getName())
                      .forks(1)
                      .warmupIterations(2)
                      .warmupTime(each)
                      .measurementIterations(3)
                      .measurementTime(each)
                      .build())
              .run()) {
        lines.add(line(result));
      }
      return lines;
    } catch (RunnerException e) {
      throw new IllegalStateException("the benchmark did not run", e);
    }
  }

  private static Measured line(RunResult result) {
    Statistics times = result.getPrimaryResult().getStatistics();
    double medianMs = times.getPercentile(50);
    double p99Ms = times.getPercentile(99);
    boolean isWhatIf = result.getPrimaryResult().getLabel().contains("whatIf");
    return new Measured(
        isWhatIf ? "what-if of 40 operations, audited" : "route of 40 operations evaluated",
        String.format(Locale.ROOT, "%.3f ms", medianMs),
        String.format(Locale.ROOT, "p99 %.3f ms, p99.9 %.3f ms", p99Ms, times.getPercentile(99.9)),
        isWhatIf ? "p99 <= 2 ms" : "< 1 ms",
        isWhatIf ? p99Ms <= WHAT_IF_P99_MS : medianMs < EVALUATED_MS);
  }
}
