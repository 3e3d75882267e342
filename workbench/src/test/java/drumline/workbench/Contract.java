package drumline.workbench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.yaml.snakeyaml.Yaml;

/** The contract of openapi.yaml, with a check of answers against it. */
public final class Contract {
  private static final List<String> METHODS = List.of("get", "post", "put", "delete", "patch");

  private final JsonNode document;

  /** The contract as it lies in the program. */
  public Contract() {
    try (InputStream in = Workbench.class.getResourceAsStream("openapi.yaml")) {
      Object read = new Yaml().load(Objects.requireNonNull(in));
      document = new ObjectMapper().valueToTree(read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every documented operation as method and path. */
  public Set<String> operations() {
    Set<String> all = new TreeSet<>();
    for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
      for (String method : METHODS) {
        if (path.getValue().has(method)) {
          all.add(method.toUpperCase(java.util.Locale.ROOT) + " " + path.getKey());
        }
      }
    }
    return all;
  }

  private JsonNode resolved(JsonNode node) {
    return node.has("$ref") ? document.at(node.get("$ref").asText().substring(1)) : node;
  }

  /** What stands against an answer: an undocumented status, or JSON that is not of its form. */
  public List<String> breaches(String method, String path, int status, JsonNode json) {
    JsonNode operation =
        document.get("paths").path(path).path(method.toLowerCase(java.util.Locale.ROOT));
    JsonNode response = operation.path("responses").path(String.valueOf(status));
    if (response.isMissingNode()) {
      return List.of(method + " " + path + " answers " + status + ", which is not documented");
    }
    List<String> breaches = new ArrayList<>();
    for (Map.Entry<String, JsonNode> content : resolved(response).path("content").properties()) {
      if (json != null && content.getKey().contains("json")) {
        check(content.getValue().get("schema"), json)
            .forEach(words -> breaches.add(method + " " + path + " " + status + ": " + words));
      }
    }
    return breaches;
  }

  /** What stands against the examples of the document itself. */
  public List<String> wrongExamples() {
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
      for (JsonNode operation : path.getValue()) {
        List<JsonNode> bodies = new ArrayList<>();
        bodies.add(operation.path("requestBody"));
        operation.path("responses").forEach(response -> bodies.add(resolved(response)));
        for (JsonNode body : bodies) {
          for (JsonNode content : body.path("content")) {
            if (content.has("example")) {
              check(content.get("schema"), content.get("example"))
                  .forEach(words -> wrong.add(path.getKey() + ": " + words));
            }
          }
        }
      }
    }
    return wrong;
  }

  private List<String> check(JsonNode schema, JsonNode json) {
    ObjectNode whole = schema.deepCopy();
    whole.set("components", document.get("components"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(whole.toString(), InputFormat.JSON)
        .validate(json.toString(), InputFormat.JSON)
        .stream()
        .map(error -> error.getInstanceLocation() + " " + error.getMessage())
        .toList();
  }
}
