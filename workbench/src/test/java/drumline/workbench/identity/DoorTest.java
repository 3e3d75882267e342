package drumline.workbench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.workbench.TestBench;
import drumline.workbench.TestBench.Answer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Only the person at this machine is let in, and nothing of the inside is let out. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorTest {
  private static final int LIMIT = 10 * 1024 * 1024;

  private TestBench bench;

  @BeforeAll
  void start(@TempDir Path folder) {
    bench = new TestBench(folder);
  }

  @AfterAll
  void stop() {
    bench.close();
  }

  /** A request as it goes over the wire; gives the status line. */
  private String raw(String request) throws IOException {
    try (Socket socket = new Socket(bench.address().getHost(), bench.address().getPort())) {
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      socket.getOutputStream().flush();
      return new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
          .readLine();
    }
  }

  @Test
  void aForeignNameIsNotAnswered() throws IOException {
    String port = ":" + bench.address().getPort();
    String request = "GET /api/v1/inquiries HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n\r\n";
    assertThat(raw(request.formatted("rebound.example" + port))).contains(" 421 ");
    assertThat(raw(request.formatted("127.0.0.1"))).contains(" 421 ");
    assertThat(raw(request.formatted("localhost" + port))).contains(" 200 ");
    assertThat(raw(request.formatted("127.0.0.1" + port))).contains(" 200 ");
  }

  @Test
  void anotherPageIsNotAnswered() {
    String list = "/api/v1/inquiries";
    String own = bench.address().toString().replaceAll("/$", "");
    assertThat(bench.get(list, "Origin", "https://elsewhere.example").status()).isEqualTo(403);
    assertThat(bench.get(list, "Origin", "null").status()).isEqualTo(403);
    assertThat(bench.get(list, "Origin", own).status()).isEqualTo(200);
    assertThat(bench.get(list, "Sec-Fetch-Site", "cross-site").status()).isEqualTo(403);
    assertThat(bench.get(list, "Sec-Fetch-Site", "same-site").status()).isEqualTo(403);
    assertThat(bench.get(list, "Sec-Fetch-Site", "same-origin").status()).isEqualTo(200);
    String[] link = {
      "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate", "Sec-Fetch-Dest", "document"
    };
    assertThat(bench.get("/", link).status()).isEqualTo(200);
    assertThat(bench.get(list, link).status()).isEqualTo(403);
  }

  @Test
  void aFormOfAnotherPageCannotChangeAnything() {
    Answer answer =
        bench.send(
            bench
                .request("/api/v1/inquiries", "Content-Type", "text/plain")
                .POST(BodyPublishers.ofString("{\"from\":\"template\"}"))
                .build());
    assertThat(answer.status()).isEqualTo(415);
  }

  @Test
  void aBodyAboveTheLimitIsRefused() {
    byte[] big = new byte[LIMIT + 1];
    Answer said =
        bench.send(
            bench.request("/api/v1/import/step").POST(BodyPublishers.ofByteArray(big)).build());
    assertThat(said.status()).isEqualTo(413);
    Answer unsaid =
        bench.send(
            bench
                .request("/api/v1/import/step")
                .POST(BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(big)))
                .build());
    assertThat(unsaid.status()).isEqualTo(413);
    Answer within =
        bench.send(
            bench
                .request("/api/v1/import/step")
                .POST(BodyPublishers.ofByteArray(new byte[LIMIT / 2]))
                .build());
    assertThat(within.status()).as("no solid model").isEqualTo(422);
  }

  @Test
  void noPathLeadsOutOfThePage() throws IOException {
    String port = ":" + bench.address().getPort();
    for (String path :
        new String[] {
          "/page/../openapi.yaml",
          "/page/%2e%2e/openapi.yaml",
          "/page/..%2fopenapi.yaml",
          "/page//etc/passwd",
          "/page/%5c..%5copenapi.yaml",
          "/vendor/../../../../META-INF/MANIFEST.MF",
          "/page/.index.html"
        }) {
      String status =
          raw(
              "GET "
                  + path
                  + " HTTP/1.1\r\nHost: localhost"
                  + port
                  + "\r\nConnection: close\r\n\r\n");
      assertThat(status).as(path).matches("HTTP/1.1 40[04] .*");
    }
    assertThat(bench.get("/page/index.html").status()).isEqualTo(200);
  }

  @Test
  void thePageMayOnlyUseItsOwnThings() {
    Answer page = bench.get("/");
    String policy = page.response().headers().firstValue("Content-Security-Policy").orElse("");
    assertThat(policy)
        .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
        .doesNotContain("unsafe");
    boolean hasImportMap = page.response().body().contains("type=\"importmap\"");
    assertThat(policy.contains("'sha256-")).isEqualTo(hasImportMap);
    assertThat(page.response().headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    Answer wrong = bench.post("/api/v1/inquiries", Map.of("from", 1));
    assertThat(wrong.response().headers().firstValue("X-Content-Type-Options")).contains("nosniff");
  }

  @Test
  void mistakesAreProblemsWithoutTheInside() {
    for (Answer answer :
        new Answer[] {
          bench.get("/nowhere"),
          bench.get("/api/v1/inquiries/x"),
          bench.post("/api/v1/inquiries", "{"),
          bench.post("/api/v1/inquiries", Map.of("from", "nothing")),
          bench.put("/api/v1/inquiries", Map.of())
        }) {
      assertThat(answer.status()).isBetween(400, 499);
      assertThat(answer.response().headers().firstValue("Content-Type").orElse(""))
          .startsWith("application/problem+json");
      assertThat(answer.json().get("detail").asText()).isNotBlank();
      assertThat(answer.response().body()).doesNotContain("Exception", "drumline.", ".java");
    }
  }
}
