package drumline.bench.route;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.bench.measure.OutsideFolder;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Planning instances with answers from an independent model. */
final class ReferenceFile {
  private ReferenceFile() {}

  /**
   * A reference route as a planning problem.
   *
   * @throws IllegalStateException if the file is not there
   */
  static PlanningProblem read(String name) {
    JsonNode route = json(name);
    int seatCount = route.get("maxToolsPerSlide").asInt();
    List<Slide> slides = new ArrayList<>();
    for (JsonNode slide : route.get("slides")) {
      slides.add(new Slide(slide.get("id").asText(), slide.get("position").asInt(), seatCount, 0));
    }
    List<Task> tasks = new ArrayList<>();
    List<Precedence> order = new ArrayList<>();
    for (JsonNode operation : route.get("operations")) {
      String id = operation.get("id").asText();
      List<String> slideIds = new ArrayList<>();
      operation.get("slides").forEach(s -> slideIds.add(s.asText()));
      tasks.add(new Task(id, operation.get("name").asText(), slideIds, modes(operation)));
      operation.get("predecessors").forEach(p -> order.add(Precedence.of(p.asText(), id)));
    }
    return PlanningProblem.of(route.get("positions").asInt(), slides, tasks).withPrecedences(order);
  }

  private static JsonNode json(String name) {
    try {
      return new ObjectMapper()
          .readTree(
              OutsideFolder.jsonFiles("reference-routes").stream()
                  .filter(file -> file.endsWith(name))
                  .findFirst()
                  .orElseThrow(() -> new IllegalStateException(name + " is absent"))
                  .toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Mode> modes(JsonNode operation) {
    if (operation.has("heldMs")) {
      return List.of(Mode.held(operation.get("heldMs").asInt()));
    }
    List<Mode> modes = new ArrayList<>();
    for (JsonNode mode : operation.get("turning")) {
      modes.add(Mode.turning(mode.get("speedRevPerMin").asInt(), mode.get("timeMs").asInt()));
    }
    return modes;
  }
}
