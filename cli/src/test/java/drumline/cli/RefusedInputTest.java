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

/** Input that is wrong on purpose: told where and what, exit 2 or 3, no trace of the program. */
class RefusedInputTest {
  private static final String WISH = "machines: [drum-8x26]";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "units: metric|units: metric\\nfoo: 1|the key \"foo\"|allowed",
        "volumes:|volums:|the key \"volums\"|Maybe \"volumes\"",
        "customer: Kestrel|custommer: Kestrel|the key \"custommer\"|Maybe \"customer\"",
        "length: 38 mm ±0.1|length: .nan|part.length|allowed: a number",
        "length: 38 mm ±0.1|length: NaN mm|part.length|a finite number",
        "per-year: 420 000|per-year: NaN|volumes.per-year|allowed: a number, 1 to",
        "diameter: 20 mm,|diameter: -20 mm,|part.outside[2].diameter|more than 0 mm",
        "diameter: 10 mm H7|diameter: 30 mm H7|part.front-bore[1] (seat)|no wall left",
        "M20x1.5-6g|M20x1.7-6g|part.features[3].size|Maybe M20, M20x2, M20x1.5",
        "M20x1.5-6g|Q99|part.features[3].size|ISO 261",
        "material: X8CrNiS18-9|material: X8CrNiS18-8|X8CrNiS18-8|X8CrNiS18-9"
      })
  void wrongLineIsNamed(String right, String wrong, String where, String what) throws IOException {
    String file = changed(right, wrong.replace("\\n", "\n"));
    for (String command : new String[] {"check", "triage", "route", "plan"}) {
      refused(2, Terminal.run(command, file), "valve-seat-body.yaml:", where, what);
    }
  }

  @Test
  void fileThatIsNoInquiry() throws IOException {
    byte[] noise = new byte[4096];
    new Random(26).nextBytes(noise);
    Path binary = Files.write(folder.resolve("noise.yaml"), noise);
    String large = written("large.yaml", "# filler\n".repeat(1_200_000));
    String empty = written("empty.yaml", "");

    refused(2, Terminal.run("plan", empty), "empty.yaml: an empty file");
    refused(2, Terminal.run("plan", binary.toString()), "noise.yaml: a binary file");
    refused(2, Terminal.run("plan", large), "large.yaml: more than 1 MB");
    refused(2, Terminal.run("plan", folder.toString()), "a folder; allowed: a text file");
    refused(2, Terminal.run("plan", folder.resolve("gone.yaml").toString()), "gone.yaml: no such");
  }

  @Test
  void circleInTheOrdersOfTheUser() throws IOException {
    String orders =
        "orders:\n    - {before: seat-spot, after: passage-drill}\n"
            + "    - {before: passage-drill, after: seat-spot}";
    String file = changed(WISH, orders + "\n  " + WISH);
    refused(2, Terminal.run("route", file), "wishes.orders", "close no circle");
    refused(2, Terminal.run("check", file), "wishes.orders", "close no circle");
    refused(3, Terminal.run("plan", file), "wishes.orders", "passage-drill before seat-spot");
  }

  @Test
  void orderOfAnOperationThatIsNotThere() throws IOException {
    String file =
        changed(WISH, "orders:\n    - {before: seat-drll, after: passage-drill}\n  " + WISH);
    refused(3, Terminal.run("plan", file), "wishes.orders", "seat-drll", "Maybe");
    refused(2, Terminal.run("check", file), "wishes.orders", "seat-drll", "Maybe");
  }

  @Test
  void barThatDoesNotFit() throws IOException {
    String file = changed("size: 26 mm", "size: 36 mm");
    refused(3, Terminal.run("plan", file), "bar: 36.0 mm across", "up to 26.0 mm on drum-8x26");
  }

  @Test
  void pieceThatNothingParts() throws IOException {
    String file = changed(WISH, "leave-out: [piece-cut-off]\n  " + WISH);
    refused(3, Terminal.run("plan", file), "0 operations that part the piece; allowed: one");
    refused(2, Terminal.run("check", file), "wishes.leave-out", "0 operations that part the piece");
    refused(2, Terminal.run("route", file), "wishes.leave-out", "0 operations that part the piece");
  }

  @Test
  void machineThatPartsNothing() throws IOException {
    written(
        "machines.yaml",
        """
        machines:
          - name: bare-8x26
            from: drum-8x26
            title: Eight spindles, nothing to cut off with
            source: a machine of our own invention
            positions:
              - {1-cross: cross, 1-end: end}
              - {2-cross: cross, 2-end: end}
              - {3-cross: cross, 3-end: end}
              - {4-cross: cross-live, 4-end: end-live}
              - {5-cross: cross-live, 5-end: end-live}
              - {6-cross: cross-live, 6-end: end}
              - {7-cross: cross, 7-end: end}
              - {8-end: end}
        """);
    Terminal run =
        Terminal.run(
            "plan",
            Terminal.example("valve-seat-body.yaml"),
            "--library",
            folder.toString(),
            "--machine",
            "bare-8x26");
    refused(3, run, "piece-cut-off", "finds no slide on bare-8x26", "only the last position");
  }

  @Test
  void machineThatIsNotInTheLibrary() throws IOException {
    Terminal run = Terminal.run("plan", Terminal.example("sleeve.yaml"), "--machine", "drum-8x62");
    refused(2, run, "machine: drum-8x62", "turning-centre-42", "Maybe drum-8x22 or drum-8x42");
    run = Terminal.run("plan", Terminal.example("sleeve.yaml"), "--machine", "sliding-head-32");
    refused(2, run, "sliding-head-32 has no spindle drum");
  }

  @Test
  void tableWithABadLineOrACircle() throws IOException {
    Path bad = folder.resolve("bad.csv");
    Files.writeString(bad, "id,time,predecessors\nA,3,\nB,x,A\n", StandardCharsets.UTF_8);
    refused(2, Terminal.run("balance", bad.toString(), "--positions", "2"), "bad.csv");
    Path circle = folder.resolve("circle.csv");
    Files.writeString(circle, "A,3,B\nB,4,A\n", StandardCharsets.UTF_8);
    refused(2, Terminal.run("balance", circle.toString(), "--positions", "2"), "circle");
    refused(2, Terminal.run("balance", circle.toString(), "--positions", "0"), "--positions");
  }

  @ParameterizedTest
  @CsvSource({
    "--seconds, 0, above 0",
    "--seconds, -1, above 0",
    "--seconds, NaN, above 0",
    "--seconds, 3601, at most 3600",
    "--seconds, soon, --seconds",
    "--seed, -1, 0 or more",
    "--library, no-such-folder, a folder that exists",
  })
  void optionOutsideItsRange(String option, String value, String allowed) throws IOException {
    refused(
        2, Terminal.run("plan", Terminal.example("sleeve.yaml"), option, value), value, allowed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "id,time,predecessors\\nA,3,\\nB,x,A|line 3: the time \"x\"",
        "A,3,\\nB,4,C|C",
        "A,3,\\nA,4,|A",
        "A,-3,|line 1",
        "A;3;|line 1",
        "A,3,B\\nB,4,C\\nC,2,A|tasks that wait for one another"
      })
  void tableThatCannotBeShared(String table, String what) throws IOException {
    String file = written("table.csv", table.replace("\\n", "\n"));
    refused(2, Terminal.run("balance", file, "--positions", "2"), "table.csv", what);
  }

  @ParameterizedTest
  @CsvSource({"0", "-3", "1001", "two"})
  void positionsThatNoMachineHas(String count) throws IOException {
    String file = written("table.csv", "A,3,\nB,4,A\n");
    refused(2, Terminal.run("balance", file, "--positions", count), "--positions", count);
  }

  /** The valve seat body with one text in it replaced. */
  private String changed(String right, String wrong) throws IOException {
    return Terminal.changed(folder, "valve-seat-body.yaml", right, wrong).toString();
  }

  private String written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8).toString();
  }

  private static void refused(int code, Terminal run, String... words) {
    assertThat(run.code()).as(run.err()).isEqualTo(code);
    assertThat(run.err()).contains(words);
    assertThat(run.out() + run.err()).doesNotContain("at drumline", "Exception", "own fault");
  }
}
