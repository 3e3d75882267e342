package drumline.economics.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumline.economics.bar.BarStock;
import drumline.economics.bar.BarYield;
import drumline.economics.tool.ToolConsumption;
import drumline.economics.tool.ToolUse;
import drumline.economics.tool.ToolWear;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BarAndToolsTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void cuttingPieceByPieceGivesTheSame(long seed) {
    BarStock stock = SampleCases.stock(new Random(seed));
    BarYield yield = BarYield.of(stock);
    int pieces = 0;
    double leftMm = yield.loadedLengthMm() - stock.firstFacingMm();
    while (leftMm - stock.stockPerPieceMm() >= stock.remnantMm()) {
      leftMm -= stock.stockPerPieceMm();
      pieces++;
    }
    assertThat(yield.piecesPerLoadCount()).isEqualTo(pieces);
    assertThat(yield.loadedLengthMm()).isLessThanOrEqualTo(stock.longestLoadMm() + 1e-6);
    assertThat(yield.partKgPerPiece() + yield.scrapKgPerPiece())
        .isCloseTo(yield.boughtKgPerPiece(), withinPercentage(1e-9));
    double bars = yield.barsPer1000Count() * stock.barLengthMm() * stock.areaMm2();
    assertThat(bars * stock.densityKgPerDm3() / 1e6 / 1000)
        .isCloseTo(yield.boughtKgPerPiece(), withinPercentage(1e-9));
  }

  @Test
  void saysHowLongABarMustBe() {
    assertThatThrownBy(
            () -> BarYield.of(new BarStock(100, 3000, 120, 3, 30, 0.2, 2.5, 314, 7.85, 900)))
        .hasMessage("barLengthMm: loaded length 100.0, allowed: at least 155.7 for one piece");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void countingPiecesGivesTheSameStops(long seed) {
    List<ToolWear> wears = SampleCases.tools(new Random(seed));
    double restartMin = 2;
    ToolConsumption tools = ToolConsumption.of(wears, restartMin, BigDecimal.ONE);
    long pieces = 200_000;
    double minutes = 0;
    long[] left = tools.uses().stream().mapToLong(ToolUse::changedEveryCount).toArray();
    for (long piece = 1; piece <= pieces; piece++) {
      boolean common = piece % tools.commonStopEveryCount() == 0;
      minutes += common ? restartMin : 0;
      for (int i = 0; i < left.length; i++) {
        ToolUse use = tools.uses().get(i);
        left[i]--;
        if (left[i] == 0) {
          boolean own = use.plan() == ToolUse.Plan.OWN_STOP;
          assertThat(own || common).isTrue();
          minutes += use.wear().changeMin() + (own ? restartMin : 0);
          left[i] = use.changedEveryCount();
        }
      }
    }
    double slowMin = minutes / pieces;
    double onceEach = wears.stream().mapToDouble(w -> w.changeMin() + restartMin).sum();
    assertThat(tools.stopMinPerPiece()).isCloseTo(slowMin, within(onceEach / pieces));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void noEdgeIsUsedBeyondItsLifeAndGroupingNeverCostsMore(long seed) {
    List<ToolWear> wears = SampleCases.tools(new Random(seed));
    ToolConsumption grouped = ToolConsumption.of(wears, 3, BigDecimal.ONE);
    double apartMin = 0;
    double apartCost = 0;
    for (ToolWear wear : wears) {
      apartMin += (wear.changeMin() + 3) / wear.piecesPerEdgeCount();
      apartCost += wear.pricePerEdge().doubleValue() / wear.piecesPerEdgeCount();
    }
    assertThat(grouped.uses())
        .allMatch(use -> use.changedEveryCount() <= use.wear().piecesPerEdgeCount());
    assertThat(grouped.stopMinPerPiece() + grouped.costPerPiece().doubleValue())
        .isLessThanOrEqualTo(apartMin + apartCost + 1e-6 * wears.size());
    assertThat(grouped.problems()).isEmpty();
  }

  @Test
  void anEdgeThatDoesNotLastAPieceIsAProblem() {
    ToolWear wear =
        new ToolWear("20", "drill", 60, 0.4, ToolWear.LifeLimit.WEAR, new BigDecimal("5"), 2);
    ToolConsumption tools = ToolConsumption.of(List.of(wear), 1, BigDecimal.ONE);
    assertThat(tools.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.where()).isEqualTo("operation 20");
              assertThat(problem.found())
                  .isEqualTo("an edge lasts 0.40 min, the cut takes 1.00 min");
            });
    assertThat(tools.costPerPiece()).isEqualByComparingTo("15");
  }
}
