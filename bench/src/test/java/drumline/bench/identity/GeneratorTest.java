package drumline.bench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.app.ask.OpenInquiry;
import drumline.bench.Bench;
import drumline.bench.inquiry.GeneratedInquiry;
import drumline.bench.measure.Ledger;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Spread;
import drumline.bench.route.GeneratedRoutes;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The generators repeat themselves and make what can be planned; the ledger only grows. */
class GeneratorTest {
  @TempDir Path folder = Path.of("");

  @Test
  void routesRepeatAndHaveALayout() {
    assertThat(GeneratedRoutes.of(20, 6, 3)).isEqualTo(GeneratedRoutes.of(20, 6, 3));
    assertThat(GeneratedRoutes.of(60, 8, 1).tasks()).hasSize(60);
    PlanningResult result =
        Planner.plan(
            GeneratedRoutes.of(20, 6, 1),
            new PlannerSettings(0.1, 1, 1),
            ProgressListener.silent(),
            Cancel.never());
    assertThat(result)
        .isInstanceOfSatisfying(
            PlanningResult.Planned.class,
            planned -> assertThat(planned.audit().broken()).isEmpty());
  }

  @Test
  void generatedInquiriesCanBeRead() throws IOException {
    for (int seed = 1; seed <= 12; seed++) {
      Path file = folder.resolve("i.yaml");
      Files.writeString(file, GeneratedInquiry.text(seed, 2 + seed % 6));
      assertThat(OpenInquiry.file(file, null).isWrong())
          .as("seed %d: %s", seed, OpenInquiry.file(file, null).problems())
          .isFalse();
    }
  }

  @Test
  void ledgerOnlyGrows() throws IOException {
    Path file = folder.resolve("ledger.tsv");
    Ledger.add(file, LocalDate.EPOCH, List.of(Measured.of("a", "1 s", "2 s", true)), "");
    Ledger.add(file, LocalDate.EPOCH, List.of(Measured.of("b", "3 s", "2 s", false)), "busy");
    assertThat(Files.readAllLines(file)).hasSize(3);
    assertThat(Files.readAllLines(file).get(2)).startsWith("1970-01-01\tb\t3 s\t-\t2 s\tno\t");
  }

  @Test
  void spreadOfFourFigures() {
    Spread spread = new Spread(List.of(4.0, 1.0, 2.0, 9.0));
    assertThat(spread.median()).isEqualTo(3);
    assertThat(spread.greatest()).isEqualTo(9);
    assertThat(spread.shareUpTo(2)).isEqualTo(0.5);
    assertThat(Bench.names()).contains("lines", "soak");
  }
}
