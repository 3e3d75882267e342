package drumline.route.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.route.rule.Capability;
import drumline.route.rule.CapabilityTable;
import drumline.shop.material.IsoGroup;
import drumline.shop.operation.OperationKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What operations reach, against the grades that textbooks print for processes. */
class CapabilityTest {
  private static final CapabilityTable TABLE = CapabilityTable.shipped();

  /**
   * Source: [MDRAW] p. 210: grade 11 drilling and rough turning, 10 milling and slotting, 9 a worn
   * automatic, 8 centre-lathe turning and boring, reaming, an automatic in good condition, 7
   * high-quality turning, 6 grinding. The printed grade lies between what is reached with care and
   * one above what is reached as a rule.
   */
  @ParameterizedTest
  @CsvSource({
    "DRILL, 11",
    "ROUGH_TURN, 11",
    "ROUGH_BORE, 11",
    "MILL_FLATS, 10",
    "MILL_SLOT, 10",
    "SLOT, 10",
    "FINISH_TURN, 8",
    "FINISH_BORE, 8",
    "REAM, 8",
    "FORM_TURN, 9"
  })
  void gradesAreThoseOfTheProcesses(OperationKind kind, int printed) {
    Capability row = TABLE.find(kind, IsoGroup.P, 20).orElseThrow();
    assertThat(printed).isBetween(row.careGradeCount(), row.gradeCount() + 1);
  }

  @Test
  void nothingThatCutsReachesTheGradesOfGrinding() {
    assertThat(TABLE.rows())
        .filteredOn(row -> row.group().isEmpty())
        .filteredOn(row -> row.kind() != OperationKind.BURNISH)
        .allMatch(row -> row.careGradeCount() >= 7);
    assertThat(TABLE.rows()).allMatch(row -> row.careGradeCount() >= 6);
  }

  @Test
  void careIsNeverWorseAndFinishingNeverCoarser() {
    assertThat(TABLE.rows())
        .allMatch(row -> row.careGradeCount() <= row.gradeCount())
        .allMatch(row -> row.careRaUm() <= row.raUm())
        .allMatch(row -> !row.source().isBlank());
    for (IsoGroup group : IsoGroup.values()) {
      for (double diameter : List.of(1.0, 3.0, 3.1, 20.0, 60.0)) {
        finer(OperationKind.ROUGH_TURN, OperationKind.FINISH_TURN, group, diameter);
        finer(OperationKind.ROUGH_BORE, OperationKind.FINISH_BORE, group, diameter);
        finer(OperationKind.DRILL, OperationKind.REAM, group, diameter);
        finer(OperationKind.FINISH_TURN, OperationKind.BURNISH, group, diameter);
      }
    }
  }

  private static void finer(OperationKind lesser, OperationKind better, IsoGroup g, double mm) {
    Optional<Capability> one = TABLE.find(lesser, g, mm);
    Optional<Capability> other = TABLE.find(better, g, mm);
    assertThat(one).as(lesser + " " + mm).isPresent();
    assertThat(other).as(better + " " + mm).isPresent();
    assertThat(other.orElseThrow().gradeCount())
        .isLessThanOrEqualTo(one.orElseThrow().gradeCount());
    assertThat(other.orElseThrow().raUm()).isLessThanOrEqualTo(one.orElseThrow().raUm());
  }
}
