package drumline.shop.quantity.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.QuantityWriter;
import drumline.shop.quantity.UnitSystem;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is written can be read again and means the same. */
class QuantityRoundTripTest {

  private static final int DRAWS = 400;

  @ParameterizedTest
  @EnumSource(QuantityKind.class)
  void readingWhatWasWrittenGivesTheSameValue(QuantityKind kind) {
    long seed = 20_260_711L + kind.name().hashCode();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < DRAWS; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-6, 7));
      for (UnitSystem system : UnitSystem.values()) {
        String written = QuantityWriter.exact(value, kind, system);
        Parsed parsed = QuantityReader.read(written, kind, system);
        assertThat(parsed).as("seed %d: %s", seed, written).isInstanceOf(Parsed.Value.class);
        double again = ((Parsed.Value) parsed).value();
        assertThat(Math.abs(again - value))
            .as("seed %d: %s read as %s", seed, written, again)
            .isLessThanOrEqualTo(4 * Math.ulp(value));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(QuantityKind.class)
  void anAmountInOtherUnitsOfTheKindConvertsConsistently(QuantityKind kind) {
    Parsed one =
        QuantityReader.read(
            QuantityWriter.exact(1, kind, UnitSystem.INCH), kind, UnitSystem.METRIC);

    assertThat(((Parsed.Value) one).value()).isBetween(1 - 1e-12, 1 + 1e-12);
  }

  @Test
  void roundsForDisplay() {
    assertThat(QuantityWriter.rounded(26, QuantityKind.LENGTH, UnitSystem.INCH, 4))
        .isEqualTo("1.024 in");
    assertThat(QuantityWriter.rounded(0.0304, QuantityKind.RATIO, UnitSystem.METRIC, 2))
        .isEqualTo("3 %");
    assertThat(QuantityWriter.rounded(0, QuantityKind.TIME, UnitSystem.METRIC, 3)).isEqualTo("0 s");
  }

  @Test
  void refusesToWriteWhatIsNoNumber() {
    assertThatThrownBy(() -> QuantityWriter.exact(Double.NaN, QuantityKind.MASS, UnitSystem.METRIC))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("value is NaN; allowed: finite numbers");
    assertThatThrownBy(() -> QuantityWriter.rounded(1, QuantityKind.MASS, UnitSystem.METRIC, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("significantCount is 0; allowed: 1 to 15");
  }
}
