package drumline.economics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.economics.cost.BreakEven;
import drumline.economics.cost.CostLine;
import drumline.economics.invest.EconomicLot;
import drumline.economics.invest.FixtureInvestment;
import drumline.economics.invest.HourRateCase;
import drumline.economics.invest.MachineHourRate;
import drumline.economics.invest.NetPresentValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class InvestmentTest {

  @ParameterizedTest(name = "{0}: {13}")
  @CsvFileSource(resources = "hour-rate.csv", numLinesToSkip = 1)
  void machineHourRate(
      String id,
      BigDecimal replacement,
      BigDecimal purchase,
      double years,
      double hours,
      double interestPct,
      BigDecimal maintenance,
      double powerKw,
      BigDecimal energy,
      BigDecimal space,
      BigDecimal tools,
      BigDecimal expected,
      BigDecimal tolerance,
      String source) {
    MachineHourRate rate =
        MachineHourRate.of(
            new HourRateCase(
                replacement,
                purchase,
                years,
                hours,
                interestPct,
                maintenance,
                powerKw,
                energy,
                space,
                tools));
    assertThat(rate.total()).isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest(name = "{0}: {7}")
  @CsvFileSource(resources = "break-even.csv", numLinesToSkip = 1)
  void breakEven(
      String id,
      BigDecimal fixed1,
      BigDecimal piece1,
      BigDecimal fixed2,
      BigDecimal piece2,
      double pieces,
      double tolerance,
      String source) {
    CostLine one = new CostLine("one", fixed1, piece1);
    CostLine two = new CostLine("two", fixed2, piece2);
    BreakEven found = BreakEven.between(one, two);
    assertThat(found.piecesCount().orElseThrow()).isCloseTo(pieces, within(tolerance));
    assertThat(BreakEven.between(two, one).piecesCount()).isEqualTo(found.piecesCount());
    assertThat(found.words())
        .endsWith((piece1.compareTo(piece2) < 0 ? "one" : "two") + " costs less.");
  }

  @ParameterizedTest(name = "{0}: {8}")
  @CsvFileSource(resources = "present-value.csv", numLinesToSkip = 1)
  void presentValue(
      String id,
      BigDecimal atOnce,
      BigDecimal perYear,
      int years,
      BigDecimal last,
      double interestPct,
      BigDecimal expected,
      BigDecimal tolerance,
      String source) {
    List<BigDecimal> cash = new ArrayList<>(Collections.nCopies(years, perYear));
    cash.set(years - 1, perYear.add(last));
    assertThat(NetPresentValue.of(atOnce, cash, interestPct))
        .isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest(name = "{0}: {9}")
  @CsvFileSource(resources = "fixture.csv", numLinesToSkip = 1)
  void piecesThatPayForAFixture(
      String id,
      double saving,
      double overheadPct,
      double yearlyPct,
      double runs,
      double setUp,
      double price,
      double pieces,
      double tolerance,
      String source) {
    FixtureInvestment fixture = new FixtureInvestment(saving, overheadPct, yearlyPct, runs, setUp);
    assertThat(fixture.piecesCount(price)).isCloseTo(pieces, within(tolerance));
    assertThat(fixture.priceRatio(fixture.piecesCount(price))).isCloseTo(price, within(1e-6));
  }

  /** [SHARMA] 5.20: 950 pieces, saving 2, six runs: +635 in a year. */
  @Test
  void surplusOfAFixture() {
    assertThat(new FixtureInvestment(2, 55, 67, 6, 50).surplusRatio(3000, 950))
        .isCloseTo(635, within(0.5));
  }

  /** [SHARMA] 5.42: 40 000 a year, order 250, stock 25 %, 7.25 from 10 000 on: 300 062.50. */
  @Test
  void orderWithPriceBreak() {
    assertThat(EconomicLot.piecesCount(40_000, 250, 7.25, 25)).isLessThan(10_000);
    assertThat(EconomicLot.yearCostRatio(40_000, 10_000, 250, 7.25, 25))
        .isCloseTo(300_062.50, within(0.005));
  }
}
