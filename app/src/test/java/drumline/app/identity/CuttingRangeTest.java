package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.app.Examples;
import drumline.app.range.CuttingRange;
import drumline.app.study.PlannedLayout;
import drumline.sheets.Figures;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The range that the uncertainty of the cutting figures leaves for cycle and cost. */
class CuttingRangeTest {
  /**
   * Speeds and feeds from memory: √(15² + 10²) = 18 %, so times of cutting by up to 1/(1 − 0.18).
   */
  private static final double LONGEST_RATIO = 1 / (1 - 0.1803) + 0.01;

  /** Windows that no longer meet ask for a change of speed within a position. */
  private static final double SPEED_CHANGE_S = 0.4;

  static List<String> names() {
    return Examples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void holdsTheStudysOwnFiguresAndNoMoreThanTheCutsCanMove(String name) {
    PlannedLayout plan = Examples.study(name).plan().orElseThrow();
    CuttingRange range = plan.range().orElseThrow();
    double cycleS = plan.timeline().cycleS();
    double indexS = plan.timeline().indexS();

    assertThat(cycleS).isBetween(range.best().cycleS(), range.worst().cycleS());
    assertThat(plan.money().cost().total()).isBetween(range.costLow(), range.costHigh());
    assertThat(range.cycleHighS()).isGreaterThan(1.01 * cycleS);
    assertThat(range.cycleLowS()).isLessThan(0.99 * cycleS);
    assertThat(range.cycleHighS() - indexS)
        .isLessThan(LONGEST_RATIO * (cycleS - indexS) + SPEED_CHANGE_S);
    assertThat(range.best().broken()).isEmpty();
    assertThat(range.worst().broken()).isEmpty();
    assertThat(Figures.number(range.costLow(), 3))
        .isNotEqualTo(Figures.number(range.costHigh(), 3));
  }
}
