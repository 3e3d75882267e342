package drumline.economics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumline.economics.cost.CostShare.Kind;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.PieceCost;
import drumline.economics.output.Effectiveness;
import drumline.economics.output.Output;
import drumline.economics.output.StopLoss;
import drumline.economics.output.YearPlan;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CycleAndDowntimeTest {
  private static final YearPlan YEAR = new YearPlan(1_000_000, 1_000_000, 4000, 0, 0);

  @ParameterizedTest(name = "{0}: {7}")
  @CsvFileSource(resources = "output.csv", numLinesToSkip = 1)
  void netOutput(
      String id,
      double cycleS,
      String stopsS,
      double availabilityPct,
      double netPerHour,
      @Nullable Double efficiencyPct,
      double tolerancePct,
      String source) {
    Output output = Output.of(cycleS, 1, stops(stopsS), availabilityPct, 0, YEAR);
    assertThat(output.netPerHour()).isCloseTo(netPerHour, withinPercentage(tolerancePct));
    if (efficiencyPct != null) {
      assertThat(output.efficiencyPct()).isCloseTo(efficiencyPct, withinPercentage(tolerancePct));
    }
  }

  /** W2's cost: material 0.35, line 0.50 a minute, tooling 0.02: 0.7867 dollars. [GRO-DOWN]. */
  @Test
  void pieceCostOfTheFlowLine() {
    Output output = Output.of(35, 1, stops("12+3"), 100, 0, YEAR);
    HourRates rates = new HourRates(new BigDecimal("30"), BigDecimal.ZERO, 1, BigDecimal.ZERO);
    PieceCost cost =
        PieceCost.of("USD", new BigDecimal("0.35"), new BigDecimal("0.02"), output, rates);
    assertThat(cost.total())
        .isCloseTo(new BigDecimal("0.7867"), Assertions.within(new BigDecimal("0.00005")));
    assertThat(cost.share(Kind.SCRAP)).isZero();
  }

  @ParameterizedTest(name = "{0}: {7}")
  @CsvFileSource(resources = "effectiveness.csv", numLinesToSkip = 1)
  void overallEffectiveness(
      String id,
      double loadingH,
      double lostH,
      double performancePct,
      double qualityPct,
      double expectedPct,
      double tolerance,
      String source) {
    assertThat(Effectiveness.pct(loadingH, lostH, performancePct, qualityPct))
        .isCloseTo(expectedPct, Assertions.within(tolerance));
  }

  private static List<StopLoss> stops(String joined) {
    return Arrays.stream(joined.split("\\+"))
        .map(text -> new StopLoss("stop", Double.parseDouble(text)))
        .toList();
  }
}
