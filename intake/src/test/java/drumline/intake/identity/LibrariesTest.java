package drumline.intake.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import drumline.intake.InquiryReader;
import drumline.intake.ProjectRoot;
import drumline.intake.ReadResult;
import drumline.intake.form.Reading;
import drumline.intake.library.Libraries;
import drumline.intake.library.LibraryChange;
import drumline.intake.library.LibraryPaths;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive.Coupling;
import drumline.shop.machine.ToolSlide;
import drumline.shop.material.Confidence;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.Material;
import drumline.shop.problem.Problem;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped libraries are complete and agree with themselves; the user's own change them. */
class LibrariesTest {

  private static final Inquiry SHIPPED = read("C45");
  private static final List<String> MATERIALS =
      Libraries.read(new Reading(), LibraryPaths.none()).designations().stream()
          .map(names -> names.get(0))
          .toList();
  private static final Set<CuttingProcess> FORMING =
      EnumSet.of(CuttingProcess.THREAD_ROLL, CuttingProcess.FORM_TAP, CuttingProcess.BURNISH);
  private static final Set<String> PLASTICS = Set.of("POM-C", "PEEK");

  @TempDir private Path folder;

  static Stream<Material> materials() {
    return MATERIALS.stream().map(name -> read(name).material());
  }

  static Stream<Machine> machines() {
    return SHIPPED.machines().stream();
  }

  @ParameterizedTest
  @MethodSource("materials")
  void everyProcessHasAWindowWithALifeThatFits(Material material) {
    for (CuttingProcess process : CuttingProcess.values()) {
      boolean springsBack = PLASTICS.contains(material.name()) && FORMING.contains(process);
      assertThat(material.findWindow(process).isPresent())
          .as(process.name())
          .isEqualTo(!springsBack);
    }
    for (CuttingWindow window : material.windows()) {
      double n = window.life().exponentRatio();
      double lifeMin = Math.pow(window.life().constantMPerMin() / window.speedHighMPerMin(), 1 / n);
      assertThat(lifeMin).as(window.toString()).isBetween(10.0, 2000.0);
      assertThat(window.feedLow()).isLessThanOrEqualTo(window.feedHigh());
      assertThat(window.source()).isNotBlank();
    }
    assertThat(material.force().source()).isNotBlank();
    assertThat(material.chipCreditPerKg()).isLessThan(material.pricePerKg());
  }

  /** Roughing at the upper speed: 15 to 90 min, common practice on machines with many tools. */
  @ParameterizedTest
  @MethodSource("materials")
  void turningLifeAtTheUpperSpeedIsUsual(Material material) {
    CuttingWindow window = material.findWindow(CuttingProcess.TURN_ROUGH).orElseThrow();
    double n = window.life().exponentRatio();
    double lifeMin = Math.pow(window.life().constantMPerMin() / window.speedHighMPerMin(), 1 / n);

    assertThat(lifeMin).isBetween(15.0, 90.0);
  }

  @ParameterizedTest
  @MethodSource("materials")
  void everyWindowHasATool(Material material) {
    for (CuttingWindow window : material.windows()) {
      assertThat(SHIPPED.tools())
          .as(window.process() + " " + window.toolMaterial())
          .anyMatch(tool -> tool.toolMaterial() == window.toolMaterial());
    }
  }

  @Test
  void everyKindOfToolIsThere() {
    EnumSet<ToolKind> kinds =
        SHIPPED.tools().stream()
            .map(ToolFamily::kind)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(ToolKind.class)));

    assertThat(kinds).containsExactlyInAnyOrder(ToolKind.values());
  }

  @ParameterizedTest
  @MethodSource("machines")
  void drumsEndWithTheCutOffAndNoEndSlide(Machine machine) {
    List<String> ids = machine.drumSlides().map(ToolSlide::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
    if (machine.kind() == Machine.Kind.DRUM) {
      List<ToolSlide> last = machine.positions().get(machine.lastPosition() - 1).slides();
      assertThat(last).hasSize(2).allMatch(slide -> slide.kind() == SlideKind.CROSS);
      double runUpS = machine.drive().highestRevPerMin() / machine.drive().runUpRevPerMinPerS();
      assertThat(runUpS).isLessThan(machine.indexS() + 0.5);
      assertThat(machine.indexS()).isBetween(0.5, 1.2);
      assertThat(machine.workholding().gripN()).isBetween(15_000.0, 60_000.0);
    }
    if (machine.drive().coupling() == Coupling.COMMON) {
      assertThat(machine.drumSlides()).noneMatch(slide -> slide.canHave(Equipment.C_AXIS));
    }
  }

  @Test
  void ownEntriesAndSingleFiguresAreListed() throws IOException {
    Files.writeString(
        folder.resolve("own.yaml"),
        """
        units: inch
        machines:
          - {name: drum-6x32, from: drum-6x32, index: 0.9 s, drive: {power: 20 hp}}
          - {name: cell-4, from: drum-6x26, title: our own}
        """);
    Path file = folder.resolve("a.yaml");
    Files.writeString(
        file,
        text("C45")
            + """
            libraries: {machines: own.yaml}
            overrides:
              materials: {C45: {price: 1.99 EUR/kg}}
            """);

    ReadResult result = InquiryReader.read(file, LibraryPaths.none());

    assertThat(result.problems()).extracting(Problem::toLine).isEmpty();
    Inquiry inquiry = result.inquiry().orElseThrow();
    assertThat(inquiry.material().pricePerKg()).isEqualTo(new BigDecimal("1.99"));
    Machine drum = named(inquiry, "drum-6x32");
    assertThat(drum.indexS()).isEqualTo(0.9);
    assertThat(drum.drive().powerKw()).isBetween(14.9, 15.0);
    assertThat(drum.drive().torqueNm()).isEqualTo(45);
    assertThat(named(inquiry, "cell-4").title()).isEqualTo("our own");
    assertThat(result.changes())
        .extracting(LibraryChange::what, LibraryChange::was, LibraryChange::now)
        .containsExactly(
            tuple("material C45 price", "1.45 EUR/kg", "1.99 EUR/kg"),
            tuple("machine drum-6x32 index", "0.75 s", "0.9 s"),
            tuple("machine drum-6x32 drive power", "15 kW", "20 hp"),
            tuple("machine cell-4", "nothing", "copied from drum-6x26 with changes"));
  }

  @Test
  void scalesMultiplyAndLeaveOwnWindowsAlone() throws IOException {
    Files.writeString(
        folder.resolve("own.yaml"),
        """
        units: metric
        materials:
          - name: 35S20 soft
            from: 35S20
            scale: {speed: 50 %, feed: 80 %}
            windows: {slot: {speed: 3 to 5 m/min}}
        """);
    Path file = folder.resolve("a.yaml");
    Files.writeString(
        file,
        text("35S20 soft")
            + """
            libraries: {materials: own.yaml}
            overrides:
              materials: {35S20 soft: {scale: {speed: 90 %}, windows: {knurl: {confidence: measured}}}}
            """);

    ReadResult result = InquiryReader.read(file, LibraryPaths.none());

    assertThat(result.problems()).extracting(Problem::toLine).isEmpty();
    Material soft = result.inquiry().orElseThrow().material();
    Material base = read("11SMn30").material();
    CuttingWindow turn = soft.findWindow(CuttingProcess.TURN_ROUGH).orElseThrow();
    CuttingWindow was = base.findWindow(CuttingProcess.TURN_ROUGH).orElseThrow();
    assertThat(turn.speedHighMPerMin() / was.speedHighMPerMin())
        .isCloseTo(0.85 * 0.5 * 0.9, within(1e-6));
    assertThat(turn.life().constantMPerMin() / was.life().constantMPerMin())
        .isCloseTo(0.85 * 0.5 * 0.9, within(1e-6));
    assertThat(turn.feedHigh() / was.feedHigh()).isCloseTo(0.8, within(1e-6));
    assertThat(soft.findWindow(CuttingProcess.TAP).orElseThrow().feedHigh())
        .isEqualTo(base.findWindow(CuttingProcess.TAP).orElseThrow().feedHigh());
    assertThat(soft.findWindow(CuttingProcess.SLOT).orElseThrow().speedHighMPerMin())
        .isCloseTo(5 * 0.9, within(1e-9));
    assertThat(soft.findWindow(CuttingProcess.KNURL).orElseThrow().confidence())
        .isEqualTo(Confidence.MEASURED);
    assertThat(result.changes())
        .extracting(LibraryChange::what, LibraryChange::was, LibraryChange::now)
        .contains(
            tuple("material 35S20 soft cutting values", "as in the library", "speed 90 %"),
            tuple("material 35S20 soft windows knurl confidence", "nothing", "measured"));
  }

  private static Machine named(Inquiry inquiry, String name) {
    return inquiry.machines().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  private static Inquiry read(String material) {
    return InquiryReader.readText(
            text(material), "a.yaml", Path.of("no-such-folder"), LibraryPaths.none())
        .inquiry()
        .orElseThrow();
  }

  private static String text(String material) {
    Path file = ProjectRoot.find().resolve("examples").resolve("sleeve.yaml");
    try {
      return Files.readString(file).replace("material: 11SMn30", "material: " + material);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
