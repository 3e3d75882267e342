package drumline.route.cut;

import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;

/**
 * Feed of a drill.
 *
 * <p>f = k·d up to 8 mm, beyond that f = k·√(8·d): k share of the diameter by the material's
 * window, d diameter in mm, f in mm/rev. Makers' feeds grow slower than the diameter. Source: the
 * window for k; the bend at 8 mm from memory.
 */
final class DrillFeed {
  private DrillFeed() {}

  static double mmPerRev(RouteDraft draft, ToolChoice choice, double diameterMm) {
    double bend = draft.allowance("drillFeedBend");
    double size = diameterMm <= bend ? diameterMm : Math.sqrt(bend * diameterMm);
    return choice.window().feedHigh() * size;
  }
}
