package drumline.shape.mesh;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** The body that an area of the half-section sweeps, as triangles. */
final class LatheMesh {
  private static final double AXIS_MM = 1e-6;

  /** Turned a little, so that no corner lies on a plane of a feature. */
  private static final double TURN_RAD = 0.013_717;

  private final int sectorCount;
  private final MeshBuilder builder = new MeshBuilder();
  private final BiFunction<PointZr, PointZr, Mark> marker;

  private LatheMesh(int sectorCount, BiFunction<PointZr, PointZr, Mark> marker) {
    this.sectorCount = sectorCount;
    this.marker = marker;
  }

  /** Sectors with which a chord keeps within a distance of a circle, a multiple of four. */
  static int sectorCount(double radiusMm, double chordMm) {
    double share = Math.min(0.9, chordMm / Math.max(radiusMm, 1e-9));
    int least = (int) Math.ceil(Math.PI / Math.acos(1 - share));
    return Math.max(12, (least + 3) / 4 * 4);
  }

  /**
   * The body.
   *
   * @param outlines outlines with the material to the right of the way
   * @param marker mark of a side by its two ends
   */
  static TriangleMesh of(
      List<List<PointZr>> outlines, int sectorCount, BiFunction<PointZr, PointZr, Mark> marker) {
    LatheMesh lathe = new LatheMesh(sectorCount, marker);
    outlines.forEach(lathe::outline);
    return lathe.builder.mesh();
  }

  private void outline(List<PointZr> outline) {
    List<int[]> rings = new ArrayList<>();
    outline.forEach(point -> rings.add(ring(point)));
    for (int i = 0; i < outline.size(); i++) {
      int next = (i + 1) % outline.size();
      Mark mark = marker.apply(outline.get(i), outline.get(next));
      band(rings.get(i), rings.get(next), mark);
    }
  }

  private int[] ring(PointZr point) {
    if (point.rMm() < AXIS_MM) {
      return new int[] {builder.vertex(0, 0, point.zMm())};
    }
    int[] ring = new int[sectorCount];
    for (int j = 0; j < sectorCount; j++) {
      double angle = TURN_RAD + 2 * Math.PI * j / sectorCount;
      double r = point.rMm();
      ring[j] = builder.vertex(r * Math.cos(angle), r * Math.sin(angle), point.zMm());
    }
    return ring;
  }

  private void band(int[] a, int[] b, Mark mark) {
    for (int j = 0; j < sectorCount; j++) {
      int k = (j + 1) % sectorCount;
      if (a.length > 1 && b.length > 1) {
        builder.triangle(a[j], a[k], b[k], mark);
        builder.triangle(a[j], b[k], b[j], mark);
      } else if (a.length > 1) {
        builder.triangle(a[j], a[k], b[0], mark);
      } else if (b.length > 1) {
        builder.triangle(a[0], b[k], b[j], mark);
      }
    }
  }
}
