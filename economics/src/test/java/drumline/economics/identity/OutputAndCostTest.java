package drumline.economics.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumline.economics.cost.CostShare;
import drumline.economics.cost.CostShare.Kind;
import drumline.economics.output.BarStop;
import drumline.economics.output.Output;
import drumline.economics.output.StopLoss;
import drumline.economics.output.TimeShare;
import drumline.economics.output.YearPlan;
import drumline.economics.study.MoneyCase;
import drumline.economics.study.MoneyStudy;
import drumline.shop.machine.BarFeed.Loading;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OutputAndCostTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void everySecondIsCountedOnce(long seed) {
    Output output = MoneyStudy.of(SampleCases.draw(seed)).output();
    double perPieceS = output.times().stream().mapToDouble(TimeShare::perGoodPieceS).sum();
    assertThat(perPieceS).isCloseTo(3600 / output.netPerHour(), withinPercentage(1e-9));
    assertThat(output.netPerHour()).isLessThanOrEqualTo(output.grossPerHour());
    assertThat(output.loadPct()).isBetween(0.0, 100 + 1e-6);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void aYearOfWholeLotsFillsTheMachine(long seed) {
    MoneyCase given = SampleCases.draw(seed);
    Output output = MoneyStudy.of(given).output();
    long lots = output.goodPerYearCount() / given.plan().goodPerLotCount();
    if (lots == 0) {
      return;
    }
    YearPlan plan = given.plan();
    YearPlan full =
        new YearPlan(
            lots * plan.goodPerLotCount(),
            plan.goodPerLotCount(),
            plan.plannedH(),
            plan.setUpH(),
            plan.startUpScrapPerLotCount());
    Output again =
        Output.of(
            3600 / output.grossPerHour(),
            1,
            List.of(new StopLoss("all stops", stopS(output))),
            output.availabilityPct(),
            output.scrapPct(),
            full);
    assertThat(again.machinesCount()).isOne();
    assertThat(again.loadPct())
        .isCloseTo(
            100.0 * lots * plan.goodPerLotCount() / output.goodPerYearCount(),
            within(100.0 / output.goodPerYearCount() + 1e-6));
  }

  private static double stopS(Output output) {
    return output.times().get(1).perGoodPieceS() + output.times().get(2).perGoodPieceS();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void moneyOfALotAddsUp(long seed) {
    MoneyCase given = SampleCases.draw(seed);
    MoneyStudy study = MoneyStudy.of(given);
    double lot = given.plan().goodPerLotCount();
    double made = lot / (1 - given.scrapPct() / 100) + given.plan().startUpScrapPerLotCount();
    double hours = made / study.output().madePerHour();
    double ofLot =
        made
                * (given.material().barPerKg().doubleValue() * study.bar().boughtKgPerPiece()
                    - given.material().scrapPerKg().doubleValue() * study.bar().scrapKgPerPiece()
                    + study.tools().costPerPiece().doubleValue())
            + hours
                * given.machine().availabilityPct()
                / 100
                * given.rates().machinePerHour().doubleValue()
            + hours
                * given.rates().labourPerHour().doubleValue()
                / given.rates().machinesPerOperatorCount()
            + given.plan().setUpH() * given.rates().setUpPerHour().doubleValue();
    assertThat(study.cost().total().doubleValue()).isCloseTo(ofLot / lot, within(5e-6));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void sharesAreTheTotalToTheLastDigit(long seed) {
    var cost = MoneyStudy.of(SampleCases.draw(seed)).cost();
    BigDecimal sum = BigDecimal.ZERO;
    for (Kind kind : Kind.values()) {
      sum = sum.add(cost.share(kind));
    }
    assertThat(cost.total()).isEqualByComparingTo(sum);
    assertThat(cost.shares()).extracting(CostShare::kind).containsExactly(Kind.values());
    assertThat(cost.runningPerPiece().add(cost.share(Kind.SET_UP)))
        .isEqualByComparingTo(cost.total());
  }

  @Test
  void barsLoadedInTheShadowCostOnlyWhatSticksOut() {
    assertThat(BarStop.of(Loading.STOPPED, 20, 5, 88).perPieceS()).isEqualTo(20.0 / 88);
    assertThat(BarStop.of(Loading.IN_SHADOW, 20, 5, 88).perPieceS()).isEqualTo(15.0 / 88);
    assertThat(BarStop.of(Loading.IN_SHADOW, 4, 5, 88).perPieceS()).isZero();
  }

  @Test
  void refusesWhatHasNoAnswer() {
    YearPlan plan = new YearPlan(1000, 100, 1000, 1, 0);
    assertThatThrownBy(() -> Output.of(Double.NaN, 1, List.of(), 90, 0, plan))
        .hasMessage("cycleS: NaN, allowed: above 0");
    assertThatThrownBy(() -> Output.of(5, 1, List.of(), 101, 0, plan))
        .hasMessage("availabilityPct: 101.0, allowed: above 0 and at most 100 %");
    assertThatThrownBy(() -> Output.of(5, 1, List.of(), 90, 100, plan))
        .hasMessage("scrapPct: 100.0, allowed: 0 or more and below 100 %");
    assertThatThrownBy(() -> new StopLoss("bars", -1))
        .hasMessage("perPieceS: -1.0, allowed: 0 or more");
  }
}
