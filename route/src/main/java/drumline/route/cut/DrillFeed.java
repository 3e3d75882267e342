package drumline.route.cut;

import drumline.route.draft.ToolChoice;

/**
 * Feed of a drill.
 *
 * <p>f = k·d up to 8 mm, beyond that f = k·√(8·d): k share of the diameter by the material's
 * window, d diameter in mm, f in mm/rev. Makers' feeds grow slower than the diameter. Source: the
 * window for k; the bend at 8 mm from memory.
 */
final class DrillFeed {
  private static final double BEND_MM = 8;

  private DrillFeed() {}

  static double mmPerRev(ToolChoice choice, double diameterMm) {
    double size = diameterMm <= BEND_MM ? diameterMm : Math.sqrt(BEND_MM * diameterMm);
    return choice.window().feedHigh() * size;
  }
}
