package drumline.workbench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumline.workbench.TestBench;
import drumline.workbench.TestBench.Answer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody overwrites another unseen, and every change can be taken back. */
class ChangesTest {
  private static final String INQUIRIES = "/api/v1/inquiries/";

  private static Map<String, Object> years(int revision, String value) {
    Map<String, Object> edit =
        Map.of("do", "set", "path", List.of("volumes", "years"), "value", value);
    return Map.of("expectedRevision", revision, "edits", List.of(edit));
  }

  @Test
  void theSecondOfTwoWindowsIsToldWhoWasFirst(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      String id = bench.example("sleeve.yaml");
      assertThat(bench.post(INQUIRIES + id + "/edits", years(1, "4")).status()).isEqualTo(200);
      Answer stale = bench.post(INQUIRIES + id + "/edits", years(1, "5"));
      assertThat(stale.status()).isEqualTo(409);
      assertThat(stale.json().get("presentRevision").asInt()).isEqualTo(2);
      assertThat(stale.json().get("changedBy").asText()).isEqualTo("tester");
      assertThat(stale.json().get("changedAt").asText()).contains("T");
      assertThat(bench.get(INQUIRIES + id).json().at("/tree/volumes/years").asText())
          .isEqualTo("4");
    }
  }

  @Test
  void ofManyAtOnceExactlyOneIsSaved(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      String id = bench.example("sleeve.yaml");
      AtomicInteger saved = new AtomicInteger();
      AtomicInteger stale = new AtomicInteger();
      IntStream.range(0, 12)
          .parallel()
          .forEach(
              i -> {
                int status = bench.post(INQUIRIES + id + "/edits", years(1, "1" + i)).status();
                (status == 200 ? saved : stale).addAndGet(status == 200 || status == 409 ? 1 : 99);
              });
      assertThat(saved.get()).isEqualTo(1);
      assertThat(stale.get()).isEqualTo(11);
    }
  }

  @Test
  void undoReachesAcrossARestart(@TempDir Path folder) {
    String id;
    String text;
    try (TestBench bench = new TestBench(folder)) {
      id = bench.example("sleeve.yaml");
      text = bench.get(INQUIRIES + id).json().get("text").asText();
      bench.post(INQUIRIES + id + "/edits", years(1, "4"));
    }
    try (TestBench bench = new TestBench(folder)) {
      JsonNode undone = bench.post(INQUIRIES + id + "/undo", Map.of("expectedRevision", 2)).json();
      assertThat(undone.get("text").asText()).isEqualTo(text);
      assertThat(undone.get("canRedo").asBoolean()).isTrue();
      JsonNode redone = bench.post(INQUIRIES + id + "/redo", Map.of("expectedRevision", 3)).json();
      assertThat(redone.at("/tree/volumes/years").asText()).isEqualTo("4");
      assertThat(redone.get("text").asText()).startsWith("# Bearing sleeve");
    }
  }

  @Test
  void aTextWithErrorsIsKeptAndItsErrorsHaveTheirPlace(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      String id = bench.example("sleeve.yaml");
      Map<String, Object> edit =
          Map.of("do", "set", "path", List.of("part", "outside", 1, "diameter"), "value", "wide");
      JsonNode saved =
          bench
              .post(
                  INQUIRIES + id + "/edits", Map.of("expectedRevision", 1, "edits", List.of(edit)))
              .json();
      JsonNode problem = saved.at("/problems/0");
      assertThat(problem.get("elementId").asText()).isEqualTo("flange");
      assertThat(problem.get("path").toString()).startsWith("[\"part\",\"outside\",1");
      String line = saved.get("text").asText().split("\n", -1)[problem.get("line").asInt() - 1];
      assertThat(line).contains("diameter: wide");
      JsonNode print = bench.get(INQUIRIES + id + "/print").json();
      assertThat(print.get("svgRevision").asInt()).isEqualTo(1);
      assertThat(print.get("svg").asText())
          .contains("class=\"element marked\" data-element=\"flange\"");
    }
  }
}
