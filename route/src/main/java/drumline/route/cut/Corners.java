package drumline.route.cut;

import drumline.route.draft.RouteDraft;
import drumline.shop.part.Bar;

/**
 * What the corners of hexagon and square bar cost a blade: from the circle across corners to the
 * one across flats the cut is interrupted, and the feed less.
 *
 * <p>further turns = (R − r)·(1/(k·f) − 1/f), R and r half the sizes across corners and flats in
 * mm, f feed in mm/rev, k share of the feed. Source: common practice; k from memory.
 */
final class Corners {
  private Corners() {}

  /** Further turns of a plunge that begins at a diameter; none below the flats, or in round bar. */
  static double furtherCount(RouteDraft draft, double fromDiameterMm, double feedMmPerRev) {
    Bar bar = draft.inquiry().bar();
    double depth = (Math.min(fromDiameterMm, bar.acrossCornersMm()) - bar.sizeMm()) / 2;
    double share = draft.allowance("cornerFeed");
    return Math.max(0, depth) * (1 / share - 1) / feedMmPerRev;
  }
}
