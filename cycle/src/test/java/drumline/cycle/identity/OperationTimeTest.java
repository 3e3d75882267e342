package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.clock.OperationTime;
import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.OperationSample;
import drumline.cycle.timeline.TimeElement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import java.util.List;
import org.junit.jupiter.api.Test;

class OperationTimeTest {
  private final ToolSlide slide = MachineSample.drum(1).findSlide("1-cross").orElseThrow();

  @Test
  void shortWaysAreATriangleOfSpeedAndLongOnesATrapezium() {
    // 24 m/min = 400 mm/s, 8 m/s² = 8000 mm/s²: full speed from 400²/8000 = 20 mm on.
    // 5 mm: 2·√(5/8000) = 0.05 s; 20 mm: 0.1 s; 40 mm: 40/400 + 400/8000 = 0.15 s.
    assertThat(OperationTime.rapidS(0, slide)).isZero();
    assertThat(OperationTime.rapidS(5, slide)).isCloseTo(0.05, within(1e-12));
    assertThat(OperationTime.rapidS(20, slide)).isCloseTo(0.1, within(1e-12));
    assertThat(OperationTime.rapidS(40, slide)).isCloseTo(0.15, within(1e-12));
  }

  @Test
  void aDrillComesBackOutOfItsHole() {
    // 50 turns at 3000 rev/min and 0.2 s: 1.2 s; approach 5 mm: 0.05 s; out over 5 + 10 mm of
    // travel: 2·√(15/8000) = 0.0866 s.
    Operation drill =
        OperationSample.operation(
            "drill",
            OperationKind.DRILL,
            SpindleCondition.TURNING,
            OperationSample.cut(50, 0.2, 5));
    List<TimeElement> elements = OperationTime.elements(drill, slide, 3000, 2);
    assertThat(elements)
        .extracting(TimeElement::kind)
        .containsExactly(TimeElement.Kind.APPROACH, TimeElement.Kind.CUT, TimeElement.Kind.RETRACT);
    assertThat(elements.get(1).lengthS()).isCloseTo(1.2, within(1e-12));
    assertThat(elements.get(2).endS()).isCloseTo(2 + 0.05 + 1.2 + 0.0866025, within(1e-6));
    assertThat(OperationTime.lengthS(drill, slide, 3000)).isCloseTo(1.3366025, within(1e-6));
  }

  @Test
  void heldWorkTakesTheSameTimeAtAnySpeed() {
    Operation held = OperationSample.fixed("slot", SpindleCondition.HELD, 1.5);
    assertThat(OperationTime.lengthS(held, slide, 0)).isEqualTo(1.5);
    assertThat(OperationTime.lengthS(held, slide, 4000)).isEqualTo(1.5);
  }

  @Test
  void turnsWithoutASpeedAreRefused() {
    Operation operation = OperationSample.turning("t", 10);
    assertThatThrownBy(() -> OperationTime.lengthS(operation, slide, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("speed of t is 0.0 rev/min, allowed: above 0");
    assertThatThrownBy(() -> OperationTime.rapidS(Double.NaN, slide))
        .hasMessage("wayMm is NaN, allowed: 0 or more");
  }
}
