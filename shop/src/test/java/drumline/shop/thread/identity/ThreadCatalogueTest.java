package drumline.shop.thread.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import drumline.shop.thread.ThreadSize.ThreadHand;
import drumline.shop.thread.ThreadSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Threads are found the way prints call them, and every thread of the catalogue makes sense. */
class ThreadCatalogueTest {

  static List<String> designations() {
    return ThreadCatalogue.designations();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "M12; M12; 6g/6H; RIGHT",
        "m12; M12; 6g/6H; RIGHT",
        "M12x1.75; M12; 6g/6H; RIGHT",
        "M12x1; M12x1; 6g/6H; RIGHT",
        "M12×1-6g; M12x1; 6g/6H; RIGHT",
        "M12 X 1 - 4h; M12x1; 4h/6H; RIGHT",
        "M12-6e; M12; 6e/6H; RIGHT",
        "M12 6G; M12; 6g/6G; RIGHT",
        "M12-5g6g; M12; 5g6g/6H; RIGHT",
        "M12x1-6H/6g LH; M12x1; 6g/6H; LEFT",
        "M12-LH; M12; 6g/6H; LEFT",
        "M2.5x.35; M2.5x0.35; 6g/6H; RIGHT",
        "1/4-20 UNC-2B; 1/4-20 UNC; 2A/2B; RIGHT",
        "1/4\"-20 UNC; 1/4-20 UNC; 2A/2B; RIGHT",
        "1/4-20; 1/4-20 UNC; 2A/2B; RIGHT",
        ".250-20 UNC-3A; 1/4-20 UNC; 3A/3B; RIGHT",
        "#10-32 UNF; #10-32 UNF; 2A/2B; RIGHT",
        "10-32 UNF; #10-32 UNF; 2A/2B; RIGHT",
        "No. 10-32 UNF-2A; #10-32 UNF; 2A/2B; RIGHT",
        "1-8 UNC; 1-8 UNC; 2A/2B; RIGHT",
        "1-64 UNC; #1-64 UNC; 2A/2B; RIGHT",
        "1 1/8-7 UNC-2A-LH; 1 1/8-7 UNC; 2A/2B; LEFT",
        "1-1/8-7 UNC; 1 1/8-7 UNC; 2A/2B; RIGHT",
        "2-4 1/2 UNC; 2-4.5 UNC; 2A/2B; RIGHT",
        "G1/4; G 1/4; A; RIGHT",
        "G 3/8 A; G 3/8; A; RIGHT",
        "G3/8B; G 3/8; B; RIGHT",
        "G 1 1/4; G 1 1/4; A; RIGHT",
        "R 1/2; R 1/2; ``; RIGHT",
        "Rp1/2; Rp 1/2; ``; RIGHT",
        "Rc 1-1/4; Rc 1 1/4; ``; RIGHT",
        "1/8-27 NPT; 1/8-27 NPT; ``; RIGHT",
        "1/8 NPT; 1/8-27 NPT; ``; RIGHT",
        "NPT 1/8; 1/8-27 NPT; ``; RIGHT",
        "1-1/4 NPT; 1 1/4-11.5 NPT; ``; RIGHT",
        "1-11 1/2 NPT; 1-11.5 NPT; ``; RIGHT",
      })
  void isFoundTheWayPrintsCallIt(
      String written, String designation, String toleranceClass, ThreadHand hand) {
    ThreadSize thread = ThreadCatalogue.find(written).orElseThrow();

    assertThat(thread.designation()).isEqualTo(designation);
    assertThat(thread.toleranceClass()).isEqualTo(toleranceClass);
    assertThat(thread.hand()).isEqualTo(hand);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "M10x1.2; 'Maybe M10, M10x1.25, M10x1, M10x0.75.'",
        "M12x1,5; 'Maybe M12x1.5.'",
        "M13; 'Maybe M12, M14.'",
        "M12-7q; 'Maybe M12 in another tolerance class.'",
        "1/4-22 UNC; 'Maybe 1/4-20 UNC, 1/4-28 UNF, 1/4-32 UNEF, 1/4-18 NPT.'",
        "1/4-20 UNC-1A; 'Maybe 1/4-20 UNC in another tolerance class.'",
        "G 5/4; 'Maybe G 1/4, G 5/8, G 3/4.'",
      })
  void anUnknownOneIsAnsweredWithTheNearest(String written, String hint) {
    assertThat(ThreadCatalogue.find(written)).isEmpty();
    assertThat(ThreadCatalogue.explain(written, "part.yaml line 12").hint()).isEqualTo(hint);
  }

  @Test
  void theProblemNamesPlaceAndStandards() {
    assertThat(ThreadCatalogue.explain("M10x1.2", "part.yaml line 12").toLine())
        .startsWith(
            "error: part.yaml line 12: \"M10x1.2\"; allowed: a thread of ISO 261 (M1.6 to M64)")
        .endsWith("Maybe M10, M10x1.25, M10x1, M10x0.75.");
  }

  @ParameterizedTest
  @MethodSource("designations")
  void itsOwnNameFindsIt(String designation) {
    assertThat(ThreadCatalogue.find(designation))
        .map(ThreadSize::designation)
        .contains(designation);
  }

  @ParameterizedTest
  @MethodSource("designations")
  void limitsStandInOrderAndScrewGoesIntoNut(String designation) {
    ThreadSize thread = ThreadCatalogue.find(designation).orElseThrow();

    assertThat(thread.minorMm()).isLessThan(thread.pitchDiameterMm());
    assertThat(thread.pitchDiameterMm()).isLessThan(thread.majorMm());
    thread
        .external()
        .ifPresent(
            e -> {
              assertThat(e.majorMinMm()).isLessThan(e.majorMaxMm());
              assertThat(e.pitchMinMm()).isLessThan(e.pitchMaxMm());
              assertThat(e.pitchMaxMm()).isLessThan(e.majorMinMm());
            });
    thread
        .internal()
        .ifPresent(
            i -> {
              assertThat(i.minorMinMm()).isLessThan(i.minorMaxMm());
              assertThat(i.pitchMinMm()).isLessThan(i.pitchMaxMm());
              assertThat(i.minorMaxMm()).isLessThan(i.pitchMinMm());
            });
    if (thread.taperRatio() == 0 && thread.external().isPresent()) {
      assertThat(thread.external().get().pitchMaxMm())
          .isLessThanOrEqualTo(thread.internal().orElseThrow().pitchMinMm() + 1e-9);
    }
  }

  @ParameterizedTest
  @MethodSource("designations")
  void startingDiametersFitTheLimits(String designation) {
    ThreadSize thread = ThreadCatalogue.find(designation).orElseThrow();
    var start = thread.start();

    if (thread.taperRatio() == 0 && start.tapDrillMm().isPresent()) {
      var internal = thread.internal().orElseThrow();
      assertThat(start.tapDrillMm().getAsDouble())
          .as(designation)
          .isBetween(internal.minorMinMm(), internal.minorMaxMm());
    }
    start
        .formTapDrillMm()
        .ifPresent(
            mm -> assertThat(mm).isBetween(thread.pitchDiameterMm() - 0.1, thread.majorMm()));
    start
        .rollBlankMm()
        .ifPresent(
            mm -> {
              var external = thread.external().orElseThrow();
              assertThat(mm).isBetween(external.pitchMinMm(), external.pitchMaxMm());
            });
  }

  @Test
  void theBasicProfileIsTheStandardsTriangle() {
    // [ISO-68-1]: a 60 degree triangle of height H, cut off H/8 at the crest and H/4 at the root.
    ThreadSize thread = ThreadCatalogue.find("M20").orElseThrow();
    double heightMm = thread.pitchMm() / (2 * Math.tan(Math.toRadians(30)));

    assertThat(thread.pitchDiameterMm())
        .isCloseTo(thread.majorMm() - 2 * (3.0 / 8) * heightMm, within(0.0005));
    assertThat(thread.minorMm())
        .isCloseTo(thread.majorMm() - 2 * (5.0 / 8) * heightMm, within(0.0005));
  }

  @Test
  void aTaperThreadKnowsItsTaperAndLengths() {
    ThreadSize thread = ThreadCatalogue.find("R 1/2").orElseThrow();

    assertThat(thread.system()).isEqualTo(ThreadSystem.PIPE_R);
    assertThat(thread.angleDeg()).isEqualTo(55);
    assertThat(thread.taperRatio()).isEqualTo(0.0625);
    assertThat(thread.taper().orElseThrow().gaugeMm()).isEqualTo(8.2);
    assertThat(thread.internal()).isEmpty();
    assertThat(thread.majorMm()).isEqualTo(ThreadCatalogue.find("G 1/2").orElseThrow().majorMm());
  }
}
