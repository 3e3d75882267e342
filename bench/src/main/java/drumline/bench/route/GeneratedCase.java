package drumline.bench.route;

import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import drumline.bench.measure.Spread;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Generated routes of growing size: gap and time by number of operations, with a picture. */
public final class GeneratedCase implements BenchCase {
  private static final int SEEDS = 20;
  private static final int[] OPERATIONS = {20, 30, 45, 60};
  private static final double[] GAPS_PCT = {1, 2, 4, 6};
  private static final int[] POSITIONS = {6, 8};

  @Override
  public String name() {
    return "generated";
  }

  @Override
  public List<Measured> run(Sample sample) {
    int seedCount = Math.min(SEEDS, sample.mostCount());
    List<Measured> lines = new ArrayList<>();
    List<GrowthPicture.Point> points = new ArrayList<>();
    for (int positionCount : POSITIONS) {
      for (int size = 0; size < OPERATIONS.length; size++) {
        List<Double> gaps = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        for (int seed = 1; seed <= seedCount; seed++) {
          Planning planned =
              Planning.run(
                  GeneratedRoutes.of(OPERATIONS[size], positionCount, seed), sample.searchS(), 1);
          gaps.add(planned.gapPct());
          times.add(planned.tookS());
        }
        Spread gap = new Spread(gaps);
        Spread time = new Spread(times);
        points.add(
            new GrowthPicture.Point(
                OPERATIONS[size], positionCount, gap.median(), time.median(), gap.greatest()));
        lines.add(
            new Measured(
                OPERATIONS[size] + " operations on " + positionCount + " positions",
                String.format(Locale.ROOT, "gap %.2f %%, %.1f s", gap.median(), time.median()),
                String.format(Locale.ROOT, "gap %.2f %% greatest of %d", gap.greatest(), seedCount),
                String.format(Locale.ROOT, "gap <= %.0f %% in 20 s", GAPS_PCT[size]),
                gap.median() <= GAPS_PCT[size]));
      }
    }
    write(GrowthPicture.svg(points, seedCount, sample.searchS()));
    return lines;
  }

  private static void write(String svg) {
    try {
      Files.writeString(Path.of("docs", "planner-growth.svg"), svg, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
