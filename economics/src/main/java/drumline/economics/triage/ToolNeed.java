package drumline.economics.triage;

import drumline.shop.machine.Equipment;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;

/**
 * Tools that a piece needs.
 *
 * @param frontCount at the drum
 * @param backCount at the cut-off side
 * @param liveCount driven ones
 * @param yAxisCount operations that need a Y axis
 * @param cAxisCount operations that need a held or controlled spindle
 * @param countedOn what they were counted on, in words
 */
record ToolNeed(
    int frontCount,
    int backCount,
    int liveCount,
    int yAxisCount,
    int cAxisCount,
    String countedOn) {

  /** Counted on a route: one tool for each operation. */
  static ToolNeed of(Route route) {
    int back = (int) route.operations().stream().filter(o -> o.end() == WorkEnd.BACK).count();
    return new ToolNeed(
        route.operations().size() - back,
        back,
        needing(route, Equipment.LIVE_TOOL),
        needing(route, Equipment.Y_AXIS),
        needing(route, Equipment.C_AXIS),
        "counted on the route");
  }

  /** Estimated from the print, before there is a route; Y and C axes are not guessed. */
  static ToolNeed ofPrint(Part part) {
    return PrintCount.of(part).need();
  }

  int allCount() {
    return frontCount + backCount;
  }

  private static int needing(Route route, Equipment kind) {
    return (int)
        route.operations().stream()
            .map(Operation::equipment)
            .filter(needs -> needs.contains(kind))
            .count();
  }
}
