package drumline.workbench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.app.shelf.DeskSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.Map;

/** A workbench on a free port with somebody who asks it. */
public final class TestBench implements AutoCloseable {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Workbench workbench;
  private final HttpClient client = HttpClient.newHttpClient();

  /** On a folder; planning jobs run one after the other. */
  public TestBench(Path folder) {
    workbench =
        Workbench.start(
            new WorkbenchSettings(0, new DeskSettings(folder, null, "tester", 1), "test"));
  }

  /** Its address. */
  public URI address() {
    return workbench.address();
  }

  /** The workbench itself. */
  public Workbench workbench() {
    return workbench;
  }

  /** An answer with its body as JSON where it is some. */
  public record Answer(int status, HttpResponse<String> response, JsonNode json) {}

  /** Asks without a body. */
  public Answer get(String path, String... headers) {
    return send(request(path, headers).GET().build());
  }

  /** Asks with a JSON body. */
  public Answer post(String path, Object body) {
    return send(json(path).POST(BodyPublishers.ofString(text(body))).build());
  }

  /** Puts a JSON body. */
  public Answer put(String path, Object body) {
    return send(json(path).PUT(BodyPublishers.ofString(text(body))).build());
  }

  private HttpRequest.Builder json(String path) {
    return request(path).header("Content-Type", "application/json");
  }

  /** A request to be finished by the caller. */
  public HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder builder = HttpRequest.newBuilder(address().resolve(path));
    for (int i = 0; i + 1 < headers.length; i += 2) {
      builder.header(headers[i], headers[i + 1]);
    }
    return builder;
  }

  /** Sends a request. */
  public Answer send(HttpRequest request) {
    try {
      HttpResponse<String> response = client.send(request, BodyHandlers.ofString());
      String type = response.headers().firstValue("Content-Type").orElse("");
      JsonNode json = type.contains("json") ? MAPPER.readTree(response.body()) : null;
      return new Answer(response.statusCode(), response, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A body as text. */
  public static String text(Object body) {
    try {
      return body instanceof String text ? text : MAPPER.writeValueAsString(body);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The client, for streams. */
  public HttpClient client() {
    return client;
  }

  /** A new inquiry from a shipped example; gives its address word. */
  public String example(String name) {
    String text = drumline.app.ask.OpenInquiry.exampleText(name);
    return post("/api/v1/inquiries", Map.of("from", "text", "text", text))
        .json()
        .get("id")
        .asText();
  }

  /** Plans and waits for it; gives the job as it ended. */
  public JsonNode planned(String id, double seconds) {
    Answer job = post("/api/v1/inquiries/" + id + "/plan", Map.of("seconds", seconds, "seed", 1));
    JsonNode now = job.json();
    while (now.get("endedAt").isNull()) {
      pause();
      now = get("/api/v1/jobs/" + now.get("id").asText()).json();
    }
    return now;
  }

  /** A short wait. */
  public static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    workbench.close();
  }
}
