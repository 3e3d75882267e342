package drumline.app.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cutting.tables.KienzleTable;
import drumline.intake.form.Reading;
import drumline.intake.library.Libraries;
import drumline.intake.library.LibraryPaths;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.Material;
import drumline.shop.material.MaterialSpread;
import drumline.shop.quantity.FigureTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The shipped materials against what can be known without them: composition, specific energy,
 * strength, the order in which makers rate them.
 */
class MaterialsTest {
  private static final double WIDENED = 4.0 / 3;
  private static final Map<String, Material> ALL = all();

  private static Map<String, Material> all() {
    Reading reading = new Reading();
    Libraries libraries = Libraries.read(reading, LibraryPaths.none());
    Map<String, Material> all =
        libraries.designations().stream()
            .map(names -> libraries.readMaterial(names.get(0)).orElseThrow())
            .collect(Collectors.toMap(Material::name, m -> m));
    assertThat(reading.problems()).isEmpty();
    return all;
  }

  static Stream<Material> materials() {
    return ALL.values().stream();
  }

  static List<FigureTable.Row> rows(String name) {
    return FigureTable.read(MaterialsTest.class, name).rows();
  }

  @Test
  void atLeastThirtyBarMaterialsWithDesignationsOfTheirOwn() {
    List<String> names =
        Libraries.read(new Reading(), LibraryPaths.none()).designations().stream()
            .flatMap(List::stream)
            .toList();

    assertThat(ALL).hasSizeGreaterThanOrEqualTo(30);
    assertThat(names).doesNotHaveDuplicates();
  }

  /**
   * Density of the mixture, 1/ρ = Σ w/ρi, before the metals contract: silicon and aluminium in
   * copper draw it together most, by up to 5.5 %; nothing in the list swells by more than 1.5 %.
   */
  @Test
  void densityIsThatOfTheComposition() {
    Map<String, Double> elements =
        rows("elements.csv").stream()
            .collect(Collectors.toMap(r -> r.text("element"), r -> r.figure("density")));
    List<FigureTable.Row> compositions = rows("compositions.csv");
    for (FigureTable.Row row : compositions) {
      Material material = ALL.get(row.text("material"));
      double mixed = mixed(row.text("elements").split(" "), elements);
      assertThat(mixed / material.densityKgPerDm3()).as(material.name()).isBetween(0.945, 1.015);
    }
    assertThat(compositions).hasSize(ALL.size() - 2);
  }

  private static double mixed(String[] words, Map<String, Double> elements) {
    double rest = 100;
    double volume = 0;
    for (int i = 1; i + 1 < words.length; i += 2) {
      double share = Double.parseDouble(words[i + 1]);
      volume += share / elements.get(words[i]);
      rest -= share;
    }
    return 100 / (volume + rest / elements.get(words[0]));
  }

  /** kc at a chip of 0.1 mm inside the range of specific energies of its family, widened. */
  @Test
  void specificForceIsTheSpecificEnergyOfItsFamily() {
    List<String> seen = new ArrayList<>();
    for (FigureTable.Row row : rows("specific-energy.csv")) {
      for (String word : row.text("materials").split(" ", -1)) {
        Material material = ALL.get(word.replace('_', ' '));
        seen.add(material.name());
        assertThat(kcMpa(material, 0.1) / 1000)
            .as(material.name())
            .isBetween(row.figure("low") / WIDENED, row.figure("high") * WIDENED);
      }
    }
    assertThat(seen).hasSize(ALL.size() - 2);
  }

  /** Common practice: 2.2 to 6.5 times the tensile strength at 0.1 mm, more for what smears. */
  @ParameterizedTest
  @MethodSource("materials")
  void specificForceGoesWithStrength(Material material) {
    assertThat(kcMpa(material, 0.1) / material.tensileMpa()).isBetween(2.2, 6.5);
  }

  /** One family throughout: where the table of families has a proposal, the library has it too. */
  @Test
  void forcesAreTheProposalsOfTheTable() {
    List<String> compared = new ArrayList<>();
    for (Material material : ALL.values()) {
      KienzleTable.findRow(material.name(), KienzleTable.Family.PROPOSED)
          .map(KienzleTable.Row::constants)
          .ifPresent(
              constants -> {
                compared.add(material.name());
                assertThat(material.force().specificForceMpa())
                    .as(material.name())
                    .isEqualTo(constants.kc11Mpa());
                assertThat(material.force().exponentRatio()).isEqualTo(constants.mcRatio());
              });
    }
    assertThat(compared).hasSizeGreaterThan(10);
  }

  @Test
  void fasterWhereItCutsEasier() {
    for (FigureTable.Row row : rows("machinability.csv")) {
      Material easier = ALL.get(row.text("easier"));
      Material harder = ALL.get(row.text("harder"));
      for (CuttingProcess process :
          List.of(CuttingProcess.TURN_ROUGH, CuttingProcess.DRILL, CuttingProcess.CUT_OFF)) {
        assertThat(speed(easier, process))
            .as(easier.name() + " against " + harder.name() + " in " + process)
            .isGreaterThanOrEqualTo(speed(harder, process));
      }
    }
  }

  private static double speed(Material material, CuttingProcess process) {
    return material.findWindow(process).orElseThrow().speedHighMPerMin();
  }

  @ParameterizedTest
  @MethodSource("materials")
  void worstIsSlowerAndHeavierAndBestIsNot(Material material) {
    Material worst = MaterialSpread.worst(material);
    Material best = MaterialSpread.best(material);

    assertThat(worst.force().specificForceMpa()).isGreaterThan(material.force().specificForceMpa());
    assertThat(best.force().specificForceMpa()).isLessThan(material.force().specificForceMpa());
    for (int i = 0; i < material.windows().size(); i++) {
      CuttingWindow slow = worst.windows().get(i);
      CuttingWindow usual = material.windows().get(i);
      CuttingWindow fast = best.windows().get(i);
      assertThat(slow.speedHighMPerMin()).isLessThan(usual.speedHighMPerMin());
      assertThat(usual.speedHighMPerMin()).isLessThan(fast.speedHighMPerMin());
      assertThat(Arrays.asList(lifeMin(slow), lifeMin(fast)))
          .allMatch(life -> Math.abs(life / lifeMin(usual) - 1) < 1e-9);
      double rate = fast.speedHighMPerMin() * fast.feedHigh();
      double usualRate = usual.speedHighMPerMin() * usual.feedHigh();
      assertThat(rate / usualRate - 1).isBetween(0.05, 0.35);
    }
  }

  private static double lifeMin(CuttingWindow window) {
    return Math.pow(
        window.life().constantMPerMin() / window.speedHighMPerMin(),
        1 / window.life().exponentRatio());
  }

  private static double kcMpa(Material material, double chipMm) {
    return material.force().specificForceMpa()
        * Math.pow(chipMm, -material.force().exponentRatio());
  }
}
