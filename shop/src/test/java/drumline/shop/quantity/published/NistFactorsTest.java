package drumline.shop.quantity.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shop.quantity.FigureTable;
import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares the unit factors with those printed in [NIST-SP811] 2008, appendix B.8. */
class NistFactorsTest {

  static List<FigureTable.Row> rows() {
    return FigureTable.read(NistFactorsTest.class, "nist-sp811-factors.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void factorIsThePrintedOne(FigureTable.Row row) {
    QuantityKind kind = QuantityKind.valueOf(row.text("kind"));

    Parsed parsed = QuantityReader.read(row.text("written"), kind, UnitSystem.METRIC);

    assertThat(parsed).isInstanceOf(Parsed.Value.class);
    double si = ((Parsed.Value) parsed).value() * row.figure("si_per_internal");
    double printed = row.figure("si_amount");
    double tolerance = row.text("exact").equals("yes") ? 1e-12 * printed : row.figure("half_digit");
    assertThat(Math.abs(si - printed)).as(row.place()).isLessThanOrEqualTo(tolerance);
  }
}
