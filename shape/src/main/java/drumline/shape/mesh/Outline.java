package drumline.shape.mesh;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;

/** Outlines of a half-section with fewer points. */
final class Outline {

  private Outline() {}

  /** Leaves out points as long as the rest stays within a distance; corners stay. */
  static List<PointZr> simple(List<PointZr> outline, double nearMm) {
    List<PointZr> kept = new ArrayList<>();
    int count = outline.size();
    int start = sharpest(outline);
    int from = 0;
    kept.add(outline.get(start));
    while (from < count) {
      int to = from + 1;
      while (to < count && isNear(outline, start, from, to + 1, nearMm)) {
        to++;
      }
      if (to < count) {
        kept.add(outline.get((start + to) % count));
      }
      from = to;
    }
    return kept;
  }

  private static int sharpest(List<PointZr> outline) {
    int count = outline.size();
    int best = 0;
    double most = -1;
    for (int i = 0; i < count; i++) {
      PointZr a = outline.get((i + count - 1) % count);
      PointZr b = outline.get(i);
      PointZr c = outline.get((i + 1) % count);
      double turn =
          Math.abs(
              Math.atan2(b.rMm() - a.rMm(), b.zMm() - a.zMm())
                  - Math.atan2(c.rMm() - b.rMm(), c.zMm() - b.zMm()));
      double sharp = Math.min(turn, 2 * Math.PI - turn);
      if (sharp > most) {
        most = sharp;
        best = i;
      }
    }
    return best;
  }

  private static boolean isNear(List<PointZr> outline, int start, int from, int to, double nearMm) {
    int count = outline.size();
    PointZr a = outline.get((start + from) % count);
    PointZr b = outline.get((start + to) % count);
    double dz = b.zMm() - a.zMm();
    double dr = b.rMm() - a.rMm();
    double length = Math.hypot(dz, dr);
    for (int i = from + 1; i < to; i++) {
      PointZr p = outline.get((start + i) % count);
      double along = ((p.zMm() - a.zMm()) * dz + (p.rMm() - a.rMm()) * dr) / length;
      double off = Math.abs(dz * (p.rMm() - a.rMm()) - dr * (p.zMm() - a.zMm())) / length;
      if (!(off < nearMm && along > -1e-9 && along < length + 1e-9)) {
        return false;
      }
    }
    return true;
  }
}
