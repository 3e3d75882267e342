package drumline.cutting.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cutting.force.KienzleConstants;
import drumline.cutting.tables.KienzleTable;
import drumline.cutting.tables.KienzleTable.Family;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The proposed constants against unit energies, from memory: a screen against gross mistakes. */
class UnitEnergyTest {
  private static final double WIDENED = 4.0 / 3;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit-energy.csv", useHeadersInDisplayName = true)
  void proposedConstantsLieNearTheUnitEnergies(
      String material, double fromJPerMm3, double toJPerMm3) {
    KienzleConstants proposed =
        KienzleTable.findRow(material, Family.PROPOSED).orElseThrow().constants();
    assertThat(proposed.specificForceMpa(0.1) / 1000)
        .isBetween(fromJPerMm3 / WIDENED, toJPerMm3 * WIDENED);
  }
}
