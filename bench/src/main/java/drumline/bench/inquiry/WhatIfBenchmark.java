package drumline.bench.inquiry;

import drumline.cycle.timeline.Timeline;
import drumline.planner.check.TimelineReport;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;

/** What a person waits for after moving one operation of about forty by hand. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WhatIfBenchmark {
  /** The layout on the clock. */
  @Benchmark
  public Timeline evaluate(LayoutBed bed) {
    return bed.evaluate();
  }

  /** Moved, on the clock, audited. */
  @Benchmark
  public TimelineReport whatIf(LayoutBed bed) {
    return bed.whatIf();
  }
}
