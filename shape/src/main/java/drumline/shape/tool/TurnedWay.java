package drumline.shape.tool;

import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ways of cutting points along what an operation takes away, seen from the end it works on. */
final class TurnedWay {

  private static final double CLEAR_MM = 0.5;

  private TurnedWay() {}

  /**
   * Along the inner side of what is turned outside, from the free end inwards; where a shoulder
   * stands before it, down beside the shoulder first.
   *
   * @param side the piece, for what stands before
   */
  static List<PointZr> outside(List<CutRegion> regions, WorkSide side) {
    List<PointZr> way = new ArrayList<>();
    double out = side.stockRMm() + CLEAR_MM;
    for (CutRegion region : byPlace(regions)) {
      List<PointZr> chain = chain(region, -1);
      PointZr first = chain.get(0);
      if (way.isEmpty()) {
        way.add(
            side.stepsDown(first)
                ? new PointZr(first.zMm(), out)
                : new PointZr(first.zMm() - CLEAR_MM, first.rMm()));
      } else {
        way.add(new PointZr(way.get(way.size() - 1).zMm(), out));
        way.add(new PointZr(first.zMm(), out));
      }
      way.addAll(chain);
    }
    return way;
  }

  /** Along the outer side of what is bored, from the mouth inwards. */
  static List<PointZr> inside(List<CutRegion> regions) {
    List<PointZr> way = new ArrayList<>();
    for (CutRegion region : byPlace(regions)) {
      List<PointZr> chain = chain(region, 1);
      if (way.isEmpty()) {
        way.add(new PointZr(chain.get(0).zMm() - CLEAR_MM, chain.get(0).rMm()));
      }
      way.addAll(chain);
    }
    return way;
  }

  /**
   * Down at the front side of each place and along its bottom; a blade has its front corner here.
   */
  static List<PointZr> plunge(List<CutRegion> regions, double bladeMm, double stockRMm) {
    List<PointZr> way = new ArrayList<>();
    double out = stockRMm + CLEAR_MM;
    for (CutRegion region : byPlace(regions)) {
      List<PointZr> bottom = chain(region, -1);
      double from = bottom.get(0).zMm();
      double to = Math.max(from, bottom.get(bottom.size() - 1).zMm() - bladeMm);
      boolean narrow = bottom.get(bottom.size() - 1).zMm() - from < bladeMm - 1e-6;
      if (narrow) {
        double shift = from < 0.01 ? -bladeMm : 0;
        way.add(new PointZr(from + shift, out));
        bottom.forEach(p -> way.add(new PointZr(p.zMm() + shift, p.rMm())));
      } else {
        way.add(new PointZr(from, out));
        way.addAll(sideways(bottom, bladeMm, to));
      }
      way.add(new PointZr(way.get(way.size() - 1).zMm(), out));
    }
    way.remove(way.size() - 1);
    return way;
  }

  /**
   * Way of a blade's front corner along a bottom that is wider than the blade; where the bottom
   * rises away from the front the blade's other corner follows it.
   */
  private static List<PointZr> sideways(List<PointZr> bottom, double bladeMm, double toZMm) {
    boolean rises = bottom.get(bottom.size() - 1).rMm() > bottom.get(0).rMm() + 1e-9;
    List<PointZr> way = new ArrayList<>();
    double shift = rises ? bladeMm : 0;
    double from = bottom.get(0).zMm();
    way.add(new PointZr(from, rAt(bottom, from + shift)));
    for (PointZr point : bottom) {
      double z = point.zMm() - shift;
      if (z > from && z < toZMm) {
        way.add(new PointZr(z, point.rMm()));
      }
    }
    way.add(new PointZr(toZMm, rAt(bottom, toZMm + shift)));
    return way;
  }

  private static double rAt(List<PointZr> bottom, double zMm) {
    for (int i = 1; i < bottom.size(); i++) {
      PointZr a = bottom.get(i - 1);
      PointZr b = bottom.get(i);
      if (a.zMm() <= zMm && zMm <= b.zMm() && b.zMm() > a.zMm()) {
        return a.rMm() + (zMm - a.zMm()) / (b.zMm() - a.zMm()) * (b.rMm() - a.rMm());
      }
    }
    return bottom.get(bottom.size() - 1).rMm();
  }

  /** Tip on the axis as deep as the operation reaches. */
  static double tipZMm(List<CutRegion> regions) {
    return regions.stream()
        .flatMap(region -> region.outline().stream())
        .mapToDouble(PointZr::zMm)
        .max()
        .orElse(0);
  }

  private static List<CutRegion> byPlace(List<CutRegion> regions) {
    return regions.stream().sorted(Comparator.comparingDouble(TurnedWay::fromZMm)).toList();
  }

  private static double fromZMm(CutRegion region) {
    return region.outline().stream().mapToDouble(PointZr::zMm).min().orElse(0);
  }

  /**
   * The side of an outline towards the axis (−1) or away from it (1), front to back: the corners
   * between its frontmost and its backmost one.
   */
  private static List<PointZr> chain(CutRegion region, int sign) {
    List<PointZr> ring = region.outline();
    Comparator<PointZr> wanted = Comparator.comparingDouble(point -> -sign * point.rMm());
    PointZr front =
        ring.stream()
            .min(Comparator.comparingDouble(PointZr::zMm).thenComparing(wanted))
            .orElseThrow();
    PointZr back =
        ring.stream()
            .min(Comparator.<PointZr>comparingDouble(p -> -p.zMm()).thenComparing(wanted))
            .orElseThrow();
    List<PointZr> one = walk(ring, front, back, 1);
    List<PointZr> other = walk(ring, front, back, -1);
    return sign * mean(one) >= sign * mean(other) ? one : other;
  }

  private static List<PointZr> walk(List<PointZr> ring, PointZr from, PointZr to, int step) {
    List<PointZr> way = new ArrayList<>();
    int at = ring.indexOf(from);
    way.add(from);
    while (!ring.get(at).equals(to)) {
      at = Math.floorMod(at + step, ring.size());
      way.add(ring.get(at));
    }
    return way;
  }

  private static double mean(List<PointZr> way) {
    return way.stream().mapToDouble(PointZr::rMm).average().orElse(0);
  }
}
