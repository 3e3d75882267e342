package drumline.economics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumline.economics.bar.BarStock;
import drumline.economics.bar.BarYield;
import drumline.economics.tool.EconomicLife;
import drumline.economics.tool.TaylorLife;
import drumline.economics.tool.ToolConsumption;
import drumline.economics.tool.ToolWear;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ToolAndBarTest {

  @ParameterizedTest(name = "{0}: {9}")
  @CsvFileSource(resources = "economic-life.csv", numLinesToSkip = 1)
  void lifeOfLeastCost(
      String id,
      double n,
      double c,
      BigDecimal perMinute,
      BigDecimal edge,
      double changeMin,
      double speed,
      double lifeMin,
      double tolerancePct,
      String source) {
    double life = EconomicLife.leastCostMin(n, changeMin, edge, perMinute);
    assertThat(life).isCloseTo(lifeMin, withinPercentage(tolerancePct));
    TaylorConstants taylor = new TaylorConstants(n, c);
    assertThat(TaylorLife.speedMPerMin(taylor, life))
        .isCloseTo(speed, withinPercentage(tolerancePct));
    assertThat(TaylorLife.lifeMin(taylor, TaylorLife.speedMPerMin(taylor, life)))
        .isCloseTo(life, withinPercentage(1e-9));
  }

  @ParameterizedTest(name = "{0}: {6}")
  @CsvFileSource(resources = "turned-bar-cost.csv", numLinesToSkip = 1)
  void costOfTurningABar(
      String id,
      double n,
      double c,
      double materialPerPiece,
      double expected,
      double tolerancePct,
      String source) {
    double life = EconomicLife.leastCostMin(n, 1, new BigDecimal("2"), new BigDecimal("0.25"));
    double speed = TaylorLife.speedMPerMin(new TaylorConstants(n, c), life);
    double cutMin = Math.PI * 30 * 300 / (1000 * 0.25 * speed);
    double cost = materialPerPiece + 0.25 * 1 + 0.25 * cutMin + (0.25 * 1 + 2) * cutMin / life;
    assertThat(cost).isCloseTo(expected, withinPercentage(tolerancePct));
  }

  @ParameterizedTest(name = "bar {0} mm: {8}")
  @CsvFileSource(resources = "bar.csv", numLinesToSkip = 1)
  void piecesOfABar(
      double barMm,
      double remnantMm,
      double firstMm,
      double pieceMm,
      double kerfMm,
      int pieces,
      double utilisationPct,
      double tolerancePct,
      String source) {
    BarYield yield =
        BarYield.of(
            new BarStock(barMm, 4000, remnantMm, firstMm, pieceMm, 0, kerfMm, 314, 7.85, 5000));
    assertThat(yield.piecesPerLoadCount()).isEqualTo(pieces);
    assertThat(yield.yieldPct()).isCloseTo(utilisationPct, withinPercentage(tolerancePct));
  }

  /** Tool downtime of Y1: 2.137 s for a piece; whole pieces per edge cost a little more. */
  @Test
  void downtimeOfTenTools() throws IOException {
    List<ToolWear> wears =
        new String(
                getClass().getResourceAsStream("tools-y1.csv").readAllBytes(),
                StandardCharsets.UTF_8)
            .lines()
            .skip(2)
            .map(line -> line.split(","))
            .map(cells -> wear(cells))
            .toList();
    assertThat(wears).hasSize(10);
    ToolConsumption tools = ToolConsumption.of(wears, 0, BigDecimal.ONE);
    assertThat(60 * tools.stopMinPerPiece()).isCloseTo(2.137, withinPercentage(0.1));
    assertThat(tools.stopsPer1000Count())
        .isCloseTo(
            wears.stream().mapToDouble(w -> 1000.0 / w.piecesPerEdgeCount()).sum(), within(1e-9));
  }

  private static ToolWear wear(String[] cells) {
    return new ToolWear(
        "op",
        "tool",
        Double.parseDouble(cells[0]),
        Double.parseDouble(cells[1]),
        ToolWear.LifeLimit.WEAR,
        BigDecimal.ONE,
        Double.parseDouble(cells[2]));
  }
}
