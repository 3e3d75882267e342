package drumline.route.divide;

import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;

/** Cuts a region of the half-section at a z: what the first parts of a divided operation take. */
final class RegionCut {
  private RegionCut() {}

  /**
   * The region up to a share of its length, from the front.
   *
   * @param ratio share of the region's length, above 0 to 1
   */
  static CutRegion upTo(CutRegion region, double ratio) {
    double from = region.outline().stream().mapToDouble(PointZr::zMm).min().orElse(0);
    double to = region.outline().stream().mapToDouble(PointZr::zMm).max().orElse(0);
    double limit = from + (to - from) * ratio;
    List<PointZr> kept = new ArrayList<>();
    List<PointZr> outline = region.outline();
    for (int i = 0; i < outline.size(); i++) {
      PointZr here = outline.get(i);
      PointZr next = outline.get((i + 1) % outline.size());
      if (here.zMm() <= limit) {
        kept.add(here);
      }
      if ((here.zMm() <= limit) != (next.zMm() <= limit)) {
        double share = (limit - here.zMm()) / (next.zMm() - here.zMm());
        kept.add(new PointZr(limit, here.rMm() + share * (next.rMm() - here.rMm())));
      }
    }
    return new CutRegion(kept);
  }
}
