package drumline.app.answer.layout;

import java.util.List;
import java.util.Map;

/**
 * A slide on the wall.
 *
 * @param slideId the slide
 * @param kind cross, end or back
 * @param seatCount tools it holds
 * @param axes axes it has
 * @param equipment what is fitted or can be had
 * @param thrustN greatest feed force
 * @param toolShiftS time from tool to tool
 * @param blocks operations by start
 */
public record Lane(
    String slideId,
    String kind,
    int seatCount,
    List<String> axes,
    Map<String, String> equipment,
    double thrustN,
    double toolShiftS,
    List<Block> blocks) {
  /** Copies the lists. */
  public Lane {
    axes = List.copyOf(axes);
    blocks = List.copyOf(blocks);
  }
}
