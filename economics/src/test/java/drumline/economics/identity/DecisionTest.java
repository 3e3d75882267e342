package drumline.economics.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.economics.cost.BreakEven;
import drumline.economics.cost.CostLine;
import drumline.economics.cost.Payback;
import drumline.economics.cost.Saving;
import drumline.economics.study.Assumed;
import drumline.economics.study.MoneyCase;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.Sensitivity;
import java.math.BigDecimal;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DecisionTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void everyAssumptionMovesTheCostTheRightWay(long seed) {
    MoneyCase given = SampleCases.draw(seed);
    BigDecimal asItIs = MoneyStudy.of(given).cost().total();
    Sensitivity sensitivity = Sensitivity.of(given, 10);
    Set<Assumed> savers = Set.of(Assumed.TOOL_LIFE, Assumed.LOT);
    assertThat(sensitivity.effects()).hasSize(Assumed.values().length);
    for (Sensitivity.Effect effect : sensitivity.effects()) {
      boolean saver = savers.contains(effect.assumed());
      BigDecimal lower = saver ? effect.costWhenMore() : effect.costWhenLess();
      BigDecimal higher = saver ? effect.costWhenLess() : effect.costWhenMore();
      assertThat(lower).as("%s", effect).isLessThanOrEqualTo(higher);
    }
    assertThat(sensitivity.effects()).isSortedAccordingTo((a, b) -> b.swing().compareTo(a.swing()));
    for (Assumed assumed : Assumed.values()) {
      assertThat(MoneyStudy.of(assumed.scaled(given, 1)).cost().total())
          .as("%s", assumed)
          .isEqualByComparingTo(asItIs);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("drumline.economics.identity.SampleCases#seeds")
  void atTheBreakEvenBothCostTheSame(long seed) {
    CostLine one = MoneyStudy.of(SampleCases.draw(seed)).lotLine();
    CostLine other = MoneyStudy.of(SampleCases.draw(seed + 1000)).lotLine();
    BreakEven found = BreakEven.between(one, other);
    if (found.piecesCount().isPresent()) {
      double pieces = found.piecesCount().getAsDouble();
      assertThat(one.fixed().doubleValue() + pieces * one.perPiece().doubleValue())
          .isCloseTo(
              other.fixed().doubleValue() + pieces * other.perPiece().doubleValue(),
              within(1e-6 * (1 + pieces)));
    } else {
      boolean oneSaid = found.words().startsWith(one.name());
      assertThat(oneSaid).isTrue();
      assertThat(one.cost(1).compareTo(other.cost(1)))
          .isEqualTo(one.cost(1_000_000).compareTo(other.cost(1_000_000)));
    }
  }

  @Test
  void oneWayCheaperAtAnyQuantityIsSaidInWords() {
    CostLine cheap = new CostLine("the drum", new BigDecimal("10"), new BigDecimal("1"));
    CostLine dear = new CostLine("the lathe", new BigDecimal("20"), new BigDecimal("2"));
    assertThat(BreakEven.between(cheap, dear).words())
        .isEqualTo("the drum costs less at any quantity.");
    assertThat(BreakEven.between(dear, cheap).words())
        .isEqualTo("the drum costs less at any quantity.");
    assertThat(BreakEven.between(dear, dear).words())
        .isEqualTo("Both cost the same at any quantity.");
  }

  @Test
  void paybackIsYearsOfSavingInMonths() {
    Saving saving =
        new Saving("EUR", new BigDecimal("2"), new BigDecimal("1"), new BigDecimal("200000"));
    Payback payback = Payback.of(new BigDecimal("500000"), saving, new BigDecimal("50000"));
    assertThat(payback.simpleMonthsCount().getAsDouble()).isCloseTo(30, within(1e-9));
    assertThat(payback.cashMonthsCount().getAsDouble()).isCloseTo(24, within(1e-9));
    Saving none = new Saving("EUR", new BigDecimal("1"), new BigDecimal("1"), BigDecimal.ZERO);
    Payback never = Payback.of(new BigDecimal("500000"), none, BigDecimal.ZERO);
    assertThat(never.simpleMonthsCount()).isEmpty();
    assertThat(never.words()).isEqualTo("No payback: a piece would not cost less than today.");
  }
}
