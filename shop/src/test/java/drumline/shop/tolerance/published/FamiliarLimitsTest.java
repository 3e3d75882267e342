package drumline.shop.tolerance.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits of [ISO-286-2] and [ISO-2768-1] as printed on wall charts; from memory. */
class FamiliarLimitsTest {

  static List<FigureTable.Row> rows() {
    return FigureTable.read(FamiliarLimitsTest.class, "familiar-limits.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void readsTheLimitsOfTheChart(FigureTable.Row row) {
    ToleranceParsed parsed =
        ToleranceReader.read(row.text("text"), row.figure("nominal_mm"), UnitSystem.METRIC);

    assertThat(parsed).as(row.place()).isInstanceOf(ToleranceParsed.Value.class);
    Tolerance tolerance = ((ToleranceParsed.Value) parsed).tolerance();
    assertThat(tolerance.lowerDeviationMm() * 1000)
        .as(row.place())
        .isCloseTo(row.figure("lower_um"), within(1e-6));
    assertThat(tolerance.upperDeviationMm() * 1000)
        .as(row.place())
        .isCloseTo(row.figure("upper_um"), within(1e-6));
  }
}
