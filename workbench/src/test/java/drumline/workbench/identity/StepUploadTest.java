package drumline.workbench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumline.workbench.TestBench;
import drumline.workbench.TestBench.Answer;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A solid model handed over by the page becomes an inquiry, or the answer says why not. */
class StepUploadTest {
  private static final Path MODELS =
      Path.of("..", "step", "src", "test", "resources", "drumline", "step", "published");

  @Test
  void aSolidBecomesAnInquiry(@TempDir Path folder) throws IOException {
    try (TestBench bench = new TestBench(folder)) {
      Answer answer = send(bench, Files.readAllBytes(MODELS.resolve("pin-ap214-mm.step")));
      assertThat(answer.status()).isEqualTo(201);
      JsonNode made = answer.json();
      assertThat(made.at("/tree/part/outside")).isNotEmpty();
      assertThat(made.get("text").asText()).contains("REPLACE");
      assertThat(bench.get("/api/v1/inquiries/" + made.get("id").asText()).status()).isEqualTo(200);
    }
  }

  @Test
  void whatIsNoSolidIsSaid(@TempDir Path folder) {
    try (TestBench bench = new TestBench(folder)) {
      Answer answer = send(bench, "a letter".getBytes(StandardCharsets.UTF_8));
      assertThat(answer.status()).isEqualTo(422);
      assertThat(answer.json().get("detail").asText()).contains("ISO-10303-21");
    }
  }

  private static Answer send(TestBench bench, byte[] file) {
    return bench.send(
        bench
            .request("/api/v1/import/step", "Content-Type", "application/octet-stream")
            .POST(BodyPublishers.ofByteArray(file))
            .build());
  }
}
