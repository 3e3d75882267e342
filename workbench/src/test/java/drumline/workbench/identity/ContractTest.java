package drumline.workbench.identity;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumline.workbench.Contract;
import drumline.workbench.TestBench;
import drumline.workbench.TestBench.Answer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The server answers what openapi.yaml says, and nothing else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ContractTest {
  private static final Contract CONTRACT = new Contract();
  private static final Pattern PAGE = Pattern.compile("GET (/|/inquiries.*|/page/.*|/vendor/.*)");

  private TestBench bench;
  private String id;
  private final Set<String> asked = new TreeSet<>();
  private final List<String> breaches = new ArrayList<>();

  @BeforeAll
  void start(@TempDir Path folder) {
    bench = new TestBench(folder);
    id = bench.example("valve-seat-body.yaml");
    bench.planned(id, 1);
  }

  @AfterAll
  void stop() {
    bench.close();
  }

  @Test
  void examplesAreOfTheirForm() {
    assertThat(CONTRACT.wrongExamples()).isEmpty();
  }

  @Test
  void everyRouteIsDocumentedAndBack() {
    Set<String> routes = new TreeSet<>(bench.workbench().routes());
    routes.removeIf(route -> PAGE.matcher(route).matches());
    assertThat(routes).isEqualTo(CONTRACT.operations());
  }

  private JsonNode get(String path, String... parameters) {
    return checked("GET", path, bench.get(filled(path, parameters)));
  }

  private JsonNode post(String path, Object body, String... parameters) {
    return checked("POST", path, bench.post(filled(path, parameters), body));
  }

  private JsonNode put(String path, Object body) {
    return checked("PUT", path, bench.put(filled(path), body));
  }

  private String filled(String path, String... parameters) {
    String filled = path.replace("{id}", id);
    for (int i = 0; i + 1 < parameters.length; i += 2) {
      filled =
          filled.contains("{" + parameters[i] + "}")
              ? filled.replace("{" + parameters[i] + "}", parameters[i + 1])
              : filled
                  + (filled.contains("?") ? "&" : "?")
                  + parameters[i]
                  + "="
                  + parameters[i + 1];
    }
    return filled;
  }

  private JsonNode checked(String method, String path, Answer answer) {
    asked.add(method + " " + path);
    breaches.addAll(CONTRACT.breaches(method, path, answer.status(), answer.json()));
    return answer.json();
  }

  private int revision() {
    return bench.get("/api/v1/inquiries/" + id + "/head").json().get("revision").asInt();
  }

  @Test
  void everyAnswerIsOfItsForm() {
    server();
    texts();
    layouts();
    leaves();
    mistakes();
    assertThat(breaches).isEmpty();
    Set<String> never = new TreeSet<>(CONTRACT.operations());
    never.removeAll(asked);
    assertThat(never).isEmpty();
  }

  private void server() {
    get("/health");
    get("/metrics");
    get("/drawing.css");
    get("/api/v1/about");
    get("/api/v1/openapi.yaml");
    get("/api/v1/schema/inquiry");
    get("/api/v1/libraries/materials");
    get("/api/v1/libraries/tools");
    get("/api/v1/libraries/machines");
    get("/api/v1/inquiries");
    get("/api/v1/inquiries", "find", "valve", "archived", "no");
    get("/api/v1/jobs");
    get("/api/v1/jobs/{jobId}", "jobId", "1");
    post("/api/v1/jobs/{jobId}/cancel", Map.of(), "jobId", "1");
    asked.add("GET /api/v1/jobs/{jobId}/events"); // EventsTest
    asked.add("GET /api/v1/inquiries/{id}/events");
    post("/api/v1/import/step", Map.of());
  }

  private void texts() {
    String inquiry = "/api/v1/inquiries/{id}";
    post("/api/v1/inquiries", Map.of("from", "template", "title", "Bush", "units", "inch"));
    post("/api/v1/inquiries", Map.of("from", "inquiry", "inquiryId", id));
    JsonNode read = get(inquiry);
    get(inquiry + "/head");
    String text = read.get("text").asText();
    put(
        inquiry + "/text",
        Map.of("expectedRevision", revision(), "text", text + "\n# looked at\n"));
    Map<String, Object> edit =
        Map.of("do", "set", "path", List.of("volumes", "years"), "value", "4");
    post(inquiry + "/edits", Map.of("expectedRevision", revision(), "edits", List.of(edit)));
    post(inquiry + "/undo", Map.of("expectedRevision", revision()));
    post(inquiry + "/redo", Map.of("expectedRevision", revision()));
    post(inquiry + "/rename", Map.of("expectedRevision", revision(), "name", "Seat"));
    get(inquiry + "/revisions");
    get(inquiry + "/revisions/{revision}", "revision", "1");
    get(inquiry + "/export");
    post(inquiry + "/archive", Map.of("place", "archive"));
    post(inquiry + "/archive", Map.of("place", "desk"));
  }

  private void layouts() {
    String inquiry = "/api/v1/inquiries/{id}";
    JsonNode layout = get(inquiry + "/layout");
    String operation = layout.at("/columns/0/lanes/0/blocks/0/operationId").asText();
    List<Map<String, Object>> moves =
        List.of(Map.of("operationId", operation, "position", 8, "startS", 0.5));
    JsonNode moved = post(inquiry + "/what-if", Map.of("moves", moves));
    assertThat(moved.at("/state").asText()).isEqualTo("what-if");
    post(inquiry + "/layout", Map.of("expectedRevision", revision(), "moves", moves));
    Map<String, Object> pin = Map.of("operationId", operation, "position", 1);
    put(inquiry + "/pins", Map.of("expectedRevision", revision(), "pins", List.of(pin)));
    get(inquiry + "/operations/{operationId}", "operationId", operation);
    get(inquiry + "/layouts");
    get(inquiry + "/layouts/{layoutId}", "layoutId", "1");
    get(inquiry + "/compare", "one", "1", "other", "2");
    post(
        inquiry + "/layouts/{layoutId}/use",
        Map.of("expectedRevision", revision()),
        "layoutId",
        "1");
    JsonNode job = post(inquiry + "/plan", Map.of("seconds", 1));
    post("/api/v1/jobs/{jobId}/cancel", Map.of(), "jobId", job.get("id").asText());
  }

  private void leaves() {
    String inquiry = "/api/v1/inquiries/{id}";
    get(inquiry + "/print", "units", "inch");
    get(inquiry + "/triage");
    get(inquiry + "/route");
    get(inquiry + "/route", "machine", "drum-6x32");
    get(inquiry + "/money");
    get(inquiry + "/paper");
    get(inquiry + "/paper/{name}", "name", "plan.json");
    get(inquiry + "/paper/{name}", "name", "study.html");
    get(inquiry + "/paper/{name}", "name", "study.pdf");
    get(inquiry + "/run-off");
    JsonNode empty = post("/api/v1/inquiries", Map.of("from", "text", "text", "part: ["));
    String own = id;
    id = empty.get("id").asText();
    for (String leaf : List.of("print", "triage", "route", "layout", "money", "paper", "head")) {
      get(inquiry + "/" + leaf);
    }
    get(inquiry);
    get(inquiry + "/paper/{name}", "name", "plan.json");
    id = own;
  }

  private void mistakes() {
    String inquiry = "/api/v1/inquiries/{id}";
    put(inquiry + "/text", Map.of("expectedRevision", 1, "text", "x"));
    put(inquiry + "/text", Map.of("text", "x"));
    put(inquiry + "/text", "not json");
    post(inquiry + "/what-if", Map.of("moves", List.of(Map.of("operationId", "nobody"))));
    post(inquiry + "/plan", Map.of("seconds", -1));
    get("/api/v1/jobs/{jobId}", "jobId", "999");
    String own = id;
    id = "999";
    for (String leaf : List.of("print", "triage", "route", "layout", "money", "paper", "head")) {
      get(inquiry + "/" + leaf);
    }
    id = own;
  }
}
