package drumline.shape.setting;

import drumline.shape.tool.ToolPart;
import drumline.shape.tool.WorkingTool;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import java.util.List;

/**
 * A tool on its slide, with its number and its times.
 *
 * @param number number on the tool layout: the position's and a running one
 * @param slide slide that carries it
 * @param tool the tool and its way
 * @param times when it moves
 */
public record SetTool(String number, ToolSlide slide, WorkingTool tool, ToolTimes times) {

  /** The operation that it does. */
  public Operation operation() {
    return tool.operation();
  }

  /** Where its cutting point is at a time; it waits before its start and after its end. */
  public PointZr placeAt(double atS) {
    if (atS <= times.startS() || atS >= times.endS()) {
      return atS <= times.startS() ? tool.path().fromMm() : tool.path().toMm();
    }
    if (atS < times.cutS()) {
      return tool.path().approaching(share(times.startS(), times.cutS(), atS));
    }
    if (atS < times.clearS()) {
      return tool.path().cutting(share(times.cutS(), times.clearS(), atS));
    }
    return tool.path().retracting(share(times.clearS(), times.endS(), atS));
  }

  /** Its parts where they are at a time. */
  public List<ToolPart> partsAt(double atS) {
    return tool.at(placeAt(atS));
  }

  private static double share(double fromS, double toS, double atS) {
    return toS > fromS ? (atS - fromS) / (toS - fromS) : 1;
  }
}
