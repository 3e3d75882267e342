package drumline.planner.computed;

import com.fasterxml.jackson.databind.JsonNode;
import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Precedence;
import drumline.planner.model.Slide;
import drumline.planner.model.Task;
import drumline.planner.published.OutsideFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Planning instances with answers from an independent model. */
public final class ReferenceRoutes {
  private ReferenceRoutes() {}

  /** A reference route as a planning problem. */
  public static PlanningProblem read(Path file) {
    JsonNode route = OutsideFiles.read(file);
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

  private static List<Mode> modes(JsonNode operation) {
    if (operation.has("heldMs")) {
      return List.of(Mode.held(operation.get("heldMs").asInt()));
    }
    List<Mode> modes = new ArrayList<>();
    operation
        .get("turning")
        .forEach(
            m -> modes.add(Mode.turning(m.get("speedRevPerMin").asInt(), m.get("timeMs").asInt())));
    return modes;
  }
}
