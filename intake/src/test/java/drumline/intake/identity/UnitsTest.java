package drumline.intake.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.intake.InquiryReader;
import drumline.intake.ProjectRoot;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The same piece in metric, in inches, or in both mixed, is the same piece. */
class UnitsTest {

  private static final Path FOLDER = Path.of("no-such-folder");

  @Test
  void bareInchesAndWrittenInchesAreTheSame() throws IOException {
    String bare = example("hex-coupling");
    String written =
        bare.replace("units: inch", "units: metric")
            .replaceAll("(to|depth|at|width|length|height|value): ([0-9.]+)(?=[,}])", "$1: $2 in")
            .replaceAll("(diameter): ([0-9.]+)(?=[,}])", "$1: $2 in")
            .replaceAll("diameter: 0.250 \\+0.004/0", "diameter: 0.250 in +0.004/0 in")
            .replace("1.375 in ±0.005", "1.375 in ±0.005 in")
            .replaceAll("edge: ([0-9.]+) x", "edge: $1 in x");

    assertSamePart(read(bare).part(), read(written).part());
  }

  @Test
  void millimetresAndInchesMayStandSideBySide() throws IOException {
    String metric = example("sleeve");
    String mixed =
        metric
            .replace("diameter: 28 mm h9", "diameter: 1.1023622047244095 in h9")
            .replace("depth: 41 mm", "depth: 1.6141732283464567 in")
            .replace("size: 36 mm", "size: 3.6 cm");

    assertSamePart(read(metric).part(), read(mixed).part());
  }

  @Test
  void roundValuesStayRound() throws IOException {
    Inquiry inquiry = read(example("hex-coupling"));

    assertThat(inquiry.bar().sizeMm()).isEqualTo(22.225);
    assertThat(inquiry.bar().lengthMm()).isEqualTo(3048);
    assertThat(inquiry.part().lengthMm()).isEqualTo(34.925);
    assertThat(inquiry.rates().scrapPct()).isEqualTo(1);
    assertThat(inquiry.volumes().perYearCount()).isEqualTo(1_200_000);
    assertThat(inquiry.shifts().hoursPerYearH()).isEqualTo(2 * 8 * 235);
    assertThat(inquiry.machines().get(0).cost().availabilityPct()).isEqualTo(85);
    assertThat(inquiry.material().elongationPct()).isEqualTo(20);
  }

  @Test
  void withoutDeclaredUnitsABareSizeIsAsked() throws IOException {
    String text =
        example("sleeve").replace("units: metric\n", "").replaceAll("Ra ([0-9.]+)", "Ra $1 µm");
    String bare = text.replace("to: 26 mm", "to: 26");

    ReadResult written = InquiryReader.readText(text, "a.yaml", FOLDER, LibraryPaths.none());
    ReadResult result = InquiryReader.readText(bare, "a.yaml", FOLDER, LibraryPaths.none());

    assertThat(written.problems()).extracting(Problem::toLine).isEmpty();
    assertThat(result.problems())
        .extracting(Problem::toLine)
        .containsExactly(
            "error: a.yaml:30:25 part.outside[1].to: \"26\" in a file that declares no units;"
                + " allowed: length with its unit. Maybe \"26 mm\", or \"units: metric\" at the top"
                + " of the file.");
  }

  private static void assertSamePart(Part one, Part other) {
    assertThat(one.lengthMm()).isEqualTo(other.lengthMm(), within(1e-9));
    for (int i = 0; i < one.outside().size(); i++) {
      var a = one.outside().get(i);
      var b = other.outside().get(i);
      assertThat(a.toZMm()).isEqualTo(b.toZMm(), within(1e-9));
      assertThat(a.startDiameterMm()).isEqualTo(b.startDiameterMm(), within(1e-9));
      assertThat(a.tolerance().widthMm()).isEqualTo(b.tolerance().widthMm(), within(1e-9));
      assertThat(a.frontEdge().sizeMm()).isEqualTo(b.frontEdge().sizeMm(), within(1e-9));
    }
    for (int i = 0; i < one.frontBore().size(); i++) {
      var a = one.frontBore().get(i);
      var b = other.frontBore().get(i);
      assertThat(a.toDepthMm()).isEqualTo(b.toDepthMm(), within(1e-9));
      assertThat(a.startDiameterMm()).isEqualTo(b.startDiameterMm(), within(1e-9));
      assertThat(a.tolerance().widthMm()).isEqualTo(b.tolerance().widthMm(), within(1e-9));
    }
    assertThat(one.features()).hasSameSizeAs(other.features());
  }

  private static Inquiry read(String text) {
    ReadResult result = InquiryReader.readText(text, "a.yaml", FOLDER, LibraryPaths.none());
    assertThat(result.problems()).extracting(Problem::toLine).isEmpty();
    return result.inquiry().orElseThrow();
  }

  private static String example(String name) throws IOException {
    Path file = ProjectRoot.find().resolve("examples").resolve(name + ".yaml");
    return Files.readString(file);
  }
}
