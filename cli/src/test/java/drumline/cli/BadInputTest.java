package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong input on purpose: a clear message, exit 2 or 3, never a stack trace. */
class BadInputTest {
  private static final String PIECE = "valve-seat-body.yaml";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "units: metric|units: metric\\nfoo: 1|foo",
        "customer: Kestrel|custommer: Kestrel|Maybe",
        "length: 38 mm ±0.1|length: NaN|length",
        "diameter: 20 mm,|diameter: -20 mm,|more than 0 mm",
        "diameter: 10 mm H7|diameter: 30 mm H7|seat",
        "size: M20x1.5-6g|size: M20x1.7-6g|M20x1.5",
        "material: X8CrNiS18-9|material: X8CrNiS18-8|Maybe"
      })
  void wrongFigureIsNamedWithItsPlace(String text, String by, String word) throws IOException {
    Path file = Terminal.changed(folder, PIECE, text, by.replace("\\n", "\n"));
    refused(Terminal.run("check", file.toString()), 2, word);
    refused(Terminal.run("plan", file.toString()), 2, word);
  }

  @Test
  void emptyFile() throws IOException {
    Path file = Files.createFile(folder.resolve("empty.yaml"));
    refused(Terminal.run("plan", file.toString()), 2, "empty");
  }

  @Test
  void binaryFile() throws IOException {
    byte[] bytes = new byte[5000];
    new Random(7).nextBytes(bytes);
    Path file = Files.write(folder.resolve("binary.yaml"), bytes);
    refused(Terminal.run("plan", file.toString()), 2, "text");
  }

  @Test
  void tenMegabytes() throws IOException {
    Path file = folder.resolve("large.yaml");
    Files.writeString(file, "# filler\n".repeat(1_200_000), StandardCharsets.UTF_8);
    refused(Terminal.run("plan", file.toString()), 2, "MB");
  }

  @Test
  void missingFile() {
    refused(Terminal.run("plan", folder.resolve("none.yaml").toString()), 2, "none.yaml");
  }

  @Test
  void circleInTheUsersOrders() throws IOException {
    Path file =
        Terminal.changed(
            folder,
            PIECE,
            "  machines: [drum-8x26]",
            "  machines: [drum-8x26]\n  orders:\n"
                + "    - {before: passage-drill, after: seat-spot, reason: a mistake}");
    refused(Terminal.run("plan", file.toString()), 3, "circle");
    refused(Terminal.run("route", file.toString()), 2, "seat-spot");
  }

  @Test
  void barThatDoesNotFit() {
    refused(
        Terminal.run("plan", Terminal.example(PIECE), "--machine", "drum-8x22", "--seconds", "1"),
        3,
        "bar");
  }

  @Test
  void pieceThatIsNeverCutOff() throws IOException {
    Path file =
        Terminal.changed(
            folder,
            PIECE,
            "  machines: [drum-8x26]",
            "  machines: [drum-8x26]\n  leave-out: [piece-cut-off]");
    refused(Terminal.run("plan", file.toString(), "--seconds", "1"), 3, "part");
  }

  @Test
  void unknownMachine() {
    refused(Terminal.run("plan", Terminal.example(PIECE), "--machine", "drum-8x62"), 2, "Maybe");
  }

  @Test
  void secondsOutsideTheirRange() {
    refused(Terminal.run("plan", Terminal.example(PIECE), "--seconds", "0"), 2, "--seconds");
    refused(Terminal.run("plan", Terminal.example(PIECE), "--seconds", "NaN"), 2, "--seconds");
  }

  @Test
  void tableWithABadLineOrACircle() throws IOException {
    Path bad = folder.resolve("bad.csv");
    Files.writeString(bad, "id,time,predecessors\nA,3,\nB,x,A\n", StandardCharsets.UTF_8);
    refused(Terminal.run("balance", bad.toString(), "--positions", "2"), 2, "bad.csv");
    Path circle = folder.resolve("circle.csv");
    Files.writeString(circle, "A,3,B\nB,4,A\n", StandardCharsets.UTF_8);
    refused(Terminal.run("balance", circle.toString(), "--positions", "2"), 2, "circle");
    refused(Terminal.run("balance", circle.toString(), "--positions", "0"), 2, "--positions");
  }

  private static void refused(Terminal run, int code, String word) {
    assertThat(run.all()).contains(word).doesNotContain("\tat ").doesNotContain("Exception");
    assertThat(run.code()).as(run.all()).isEqualTo(code);
  }
}
