package drumline.app.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import java.util.List;

/** Writes a balance as JSON: {@code assignment} maps each task's id to its position. */
public final class BalanceJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private BalanceJson() {}

  /**
   * The balance as text.
   *
   * @param positionCount positions asked for
   */
  public static String text(int positionCount, List<BalanceTask> tasks, BalanceResult result) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("positions", positionCount);
    node.put("cycle", result.cycleMs());
    node.put("lowerBound", result.lowerBoundMs());
    node.put("provenOptimal", result.isProvenOptimal());
    node.put("wallMs", result.elapsedMs());
    ObjectNode assignment = node.putObject("assignment");
    for (int i = 0; i < tasks.size(); i++) {
      assignment.put(tasks.get(i).id(), result.stationOf().get(i));
    }
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the balance cannot be written as JSON", e);
    }
  }
}
