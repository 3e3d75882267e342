package drumline.workbench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.workbench.TestBench;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A planning job tells of itself as it goes, and can be ended. */
class EventsTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void aJobTellsItsProgressAndItsEnd(@TempDir Path folder) throws Exception {
    try (TestBench bench = new TestBench(folder)) {
      String id = bench.example("sleeve.yaml");
      String job = plan(bench, id, 1);
      List<String> lines = new ArrayList<>();
      HttpResponse<Stream<String>> stream =
          bench
              .client()
              .send(
                  bench
                      .request("/api/v1/jobs/" + job + "/events", "Accept", "text/event-stream")
                      .timeout(Duration.ofMinutes(3))
                      .build(),
                  BodyHandlers.ofLines());
      stream.body().forEach(lines::add); // ends with the stream
      assertThat(stream.headers().firstValue("Content-Type").orElse(""))
          .startsWith("text/event-stream");
      assertThat(lines).contains("event: job", "event: progress", "event: end");
      JsonNode end = MAPPER.readTree(lastData(lines));
      assertThat(end.get("state").asText()).isEqualTo("done");
      assertThat(end.get("bestLayoutId").asText()).isEqualTo("1");
      JsonNode layout = bench.get("/api/v1/inquiries/" + id + "/layout").json();
      assertThat(layout.get("layoutId").asText()).isEqualTo("1");
      assertThat(layout.at("/cycle/cycleS").asDouble())
          .isGreaterThanOrEqualTo(layout.at("/cycle/lowerBoundS").asDouble());
    }
  }

  private static String plan(TestBench bench, String id, double seconds) {
    return bench
        .post("/api/v1/inquiries/" + id + "/plan", Map.of("seconds", seconds))
        .json()
        .get("id")
        .asText();
  }

  private static String lastData(List<String> lines) {
    String last = "";
    for (String line : lines) {
      last = line.startsWith("data: ") ? line.substring(6) : last;
    }
    return last;
  }

  @Test
  void aJobThatRunsEndsWithItsBest_andOneThatWaitsAtOnce(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      String id = bench.example("valve-seat-body.yaml");
      String first = plan(bench, id, 600);
      String second = plan(bench, id, 600);
      Instant limit = Instant.now().plus(Duration.ofMinutes(2));
      while (bench.get("/api/v1/jobs/" + first).json().at("/progress/0/bestS").isMissingNode()
          && Instant.now().isBefore(limit)) {
        TestBench.pause();
      }
      assertThat(bench.get("/api/v1/jobs/" + second).json().get("aheadCount").asInt()).isEqualTo(1);
      bench.post("/api/v1/jobs/" + second + "/cancel", Map.of());
      assertThat(bench.get("/api/v1/jobs/" + second).json().get("state").asText())
          .isEqualTo("cancelled");
      bench.post("/api/v1/jobs/" + first + "/cancel", Map.of());
      JsonNode job = bench.get("/api/v1/jobs/" + first).json();
      while (job.get("endedAt").isNull() && Instant.now().isBefore(limit)) {
        TestBench.pause();
        job = bench.get("/api/v1/jobs/" + first).json();
      }
      assertThat(job.get("state").asText()).isEqualTo("cancelled");
      assertThat(job.get("layoutIds")).hasSize(1);
    }
  }

  @Test
  void aStreamIsOnlyForThoseWhoAskForOne(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      assertThat(bench.get("/api/v1/jobs/9/events", "Accept", "text/event-stream").status())
          .isEqualTo(404);
      String id = bench.example("sleeve.yaml");
      assertThat(bench.get("/api/v1/inquiries/" + id + "/events").status()).isEqualTo(406);
    }
  }
}
