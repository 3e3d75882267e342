package drumline.workbench.wall;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;

/** Reads the server's answer about a layout. */
final class Seen {
  /** An operation with the column and slide in which it stands. */
  record Standing(
      String operationId, String title, int position, String slideId, int columnCount) {}

  private Seen() {}

  /** Every operation by column, slide and time. */
  static List<Standing> standings(JsonNode layout) {
    List<Standing> all = new ArrayList<>();
    int columnCount = 0;
    for (JsonNode column : layout.get("columns")) {
      columnCount++;
      for (JsonNode lane : column.get("lanes")) {
        for (JsonNode block : lane.get("blocks")) {
          all.add(
              new Standing(
                  block.get("operationId").asText(),
                  block.get("title").asText(),
                  column.get("position").asInt(),
                  lane.get("slideId").asText(),
                  columnCount));
        }
      }
    }
    return all;
  }

  /** Where one operation stands. */
  static Standing standing(JsonNode layout, String operationId) {
    return standings(layout).stream()
        .filter(standing -> standing.operationId().equals(operationId))
        .findFirst()
        .orElseThrow();
  }

  /** Cycle in seconds as the page writes it. */
  static String cycle(JsonNode layout) {
    return String.format(Locale.ROOT, "%.2f", layout.get("cycle").get("cycleS").asDouble());
  }

  /** How many breaches the layout has in all. */
  static long breachCount(JsonNode layout) {
    return StreamSupport.stream(layout.get("findings").spliterator(), false)
        .mapToLong(finding -> finding.get("breaches").size())
        .sum();
  }
}
