package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
  /** Jackson's graph: Scholl (1993), as in [BASIS] 8.3; six stations need a cycle of 9. */
  private static final String JACKSON_TIMES = "6 2 5 7 1 2 3 6 5 5 4";

  private static final String JACKSON_ARCS =
      "1,2 1,3 1,4 1,5 2,6 3,7 4,7 5,7 6,8 7,9 8,10 9,11 10,11";

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"valve-seat-body.yaml", "hex-coupling.yaml", "sleeve.yaml"})
  void examplesHaveNothingWrong(String name) {
    Terminal run = Terminal.run("check", Terminal.example(name));
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).startsWith("Nothing wrong");
  }

  @Test
  void triageGivesFigureAndLimitOfEachRule() {
    Terminal run = Terminal.run("triage", Terminal.example("valve-seat-body.yaml"));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("35000 pieces per lot", "drum-8x26", "does not fit");
  }

  @Test
  void routeGivesReasons() {
    Terminal run = Terminal.run("route", Terminal.example("sleeve.yaml"), "--reasons");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("ream Ø18 H8", "cut off", "after bore-drill");
  }

  @Test
  void rulesAreListedWithSourcesAndState() throws IOException {
    Terminal run = Terminal.run("rules");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out())
        .contains("ream-bore", "always on", "[MDRAW]", "finishTurnStock", "0.25 mm", "IT 8");

    String text = Files.readString(Path.of(Terminal.example("sleeve.yaml")));
    Path own = folder.resolve("own.yaml");
    Files.writeString(own, text + "\noverrides: {rules: {ream-bore: {off: no reamers here}}}\n");
    Files.writeString(
        folder.resolve("practice.yaml"), "units: metric\nallowances: {finishTurnStock: 0.2 mm}\n");
    Terminal other = Terminal.run("rules", own.toString(), "--library", folder.toString());
    assertThat(other.code()).as(other.all()).isZero();
    assertThat(other.out()).contains("off: no reamers here").doesNotContain("0.25 mm");
    Terminal route = Terminal.run("route", own.toString());
    assertThat(route.out()).doesNotContain("ream Ø18").contains("finish bore Ø18");

    Files.writeString(own, text + "\noverrides: {rules: {ream-bare: {off: no reamers here}}}\n");
    Terminal wrong = Terminal.run("check", own.toString());
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.all()).contains("ream-bare", "Maybe \"ream-bore\".");
  }

  @Test
  void severalMachinesStandSideBySideAndEachHasItsFolder() throws IOException {
    Terminal run =
        Terminal.run(
            "plan",
            Terminal.example("valve-seat-body.yaml"),
            "--machine",
            "drum-8x42",
            "--machine",
            "drum-8x26",
            "--seconds",
            "1",
            "--out",
            folder.toString());
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("drum-8x42", "drum-8x26", "planning values");
    for (String machine : new String[] {"drum-8x42", "drum-8x26"}) {
      Path place = folder.resolve(machine);
      String page = Files.readString(place.resolve("study.html"), StandardCharsets.UTF_8);
      assertThat(page).contains("<svg", "</html>").doesNotContain("<script");
      assertThat(page.replace("http://www.w3.org/", "")).doesNotContain("http://", "https://");
      for (String name : new String[] {"plan.json", "piece.svg", "cycle-wall.svg", "part.glb"}) {
        assertThat(place.resolve(name)).isNotEmptyFile();
      }
    }
  }

  @Test
  void graphAndTableGiveTheSameProvenCycle() throws IOException {
    Path graph = folder.resolve("jackson.IN2");
    Files.writeString(
        graph,
        "11\n"
            + JACKSON_TIMES.replace(' ', '\n')
            + "\n"
            + JACKSON_ARCS.replace(' ', '\n')
            + "\n-1,-1\n",
        StandardCharsets.UTF_8);
    Path table = folder.resolve("jackson.csv");
    Files.writeString(table, table(), StandardCharsets.UTF_8);
    for (Path file : new Path[] {graph, table}) {
      Terminal run = Terminal.run("balance", file.toString(), "--positions", "6", "--json");
      assertThat(run.code()).as(run.all()).isZero();
      assertThat(run.out())
          .contains("\"positions\" : 6", "\"cycle\" : 9", "\"lowerBound\" : 9")
          .contains("\"provenOptimal\" : true", "\"wallMs\"", "\"assignment\"");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"inquiry", "materials", "tools", "machines", "plan"})
  void everyFormHasItsSchema(String form) {
    Terminal run = Terminal.run("schema", form);
    assertThat(run.code()).isZero();
    assertThat(run.out().strip()).startsWith("{").contains("2020-12").endsWith("}");
  }

  private static String table() {
    String[] times = JACKSON_TIMES.split(" ", -1);
    StringBuilder text = new StringBuilder("id,time,predecessors\n");
    for (int task = 1; task <= times.length; task++) {
      StringBuilder before = new StringBuilder();
      for (String arc : JACKSON_ARCS.split(" ", -1)) {
        if (arc.endsWith("," + task)) {
          before.append(arc, 0, arc.indexOf(',')).append(' ');
        }
      }
      text.append(task).append(',').append(times[task - 1]).append(',');
      text.append(before.toString().strip()).append('\n');
    }
    return text.toString();
  }
}
