package drumline.shape.mesh;

import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The finished piece as a closed surface of triangles: the turned body, cut by flats, polygons,
 * slots, inside forms, cross holes and face holes.
 *
 * <p>Chords lie within {@link #CHORD_MM} of their circles, so that a volume is within the area of
 * the turned surface times that distance.
 *
 * <p>Known limits: threads and knurls are smooth cylinders with a mark of their own; text and burrs
 * are not drawn; slots have square ends; face holes, flats, slots and inside forms, whose angle no
 * print form says, begin at 0°.
 */
public final class PieceMesh {
  /** Greatest distance of a chord from its circle. */
  public static final double CHORD_MM = 0.01;

  private static final double NUDGE_MM = 1.3e-4;
  private static final int TRIES = 6;

  private PieceMesh() {}

  /**
   * The piece made from a bar.
   *
   * @throws IllegalStateException if no closed surface came about, with the reason
   */
  public static TriangleMesh of(Part part, Bar bar) {
    PartSection section = PartSection.of(part, bar);
    TriangleMesh mesh = turned(section, part, bar);
    List<TriangleMesh> cutters = new Cutters(part, section, CHORD_MM, NUDGE_MM).all(bar);
    for (int i = 0; i < cutters.size(); i++) {
      mesh = cut(mesh, i, cutters.get(i), new Cutters(part, section, CHORD_MM, NUDGE_MM), bar);
    }
    return mesh;
  }

  /** Tries a cut, with ends moved a little differently until its result is closed. */
  private static TriangleMesh cut(
      TriangleMesh mesh, int index, TriangleMesh cutter, Cutters cutters, Bar bar) {
    TriangleMesh next = cutter;
    String reason = "";
    for (int attempt = 1; attempt <= TRIES; attempt++) {
      try {
        return MeshCut.cut(mesh, next);
      } catch (MeshFault fault) {
        reason = String.valueOf(fault.getMessage());
        next = cutters.withNudge(NUDGE_MM * (1 + 0.731 * attempt)).all(bar).get(index);
      }
    }
    throw new IllegalStateException(
        String.format(
            Locale.ROOT, "cutter %d of %s: %s", index + 1, cutters.part().name(), reason));
  }

  private static TriangleMesh turned(PartSection section, Part part, Bar bar) {
    HalfSection piece = section.piece();
    double largest = Math.max(section.outside().outerRMm(), 1e-3);
    SurfaceMarks marks = SurfaceMarks.of(part, bar, section);
    List<List<PointZr>> outlines = new ArrayList<>();
    for (List<PointZr> outline : piece.outlines()) {
      outlines.add(marks.divided(Outline.simple(oriented(piece, outline), CHORD_MM / 2)));
    }
    return LatheMesh.of(outlines, LatheMesh.sectorCount(largest, CHORD_MM), marks::of);
  }

  /** The outline with its material to the right of the way: outer ones clockwise. */
  private static List<PointZr> oriented(HalfSection piece, List<PointZr> outline) {
    double sum = 0;
    for (int i = 0; i < outline.size(); i++) {
      PointZr a = outline.get(i);
      PointZr b = outline.get((i + 1) % outline.size());
      sum += a.zMm() * b.rMm() - b.zMm() * a.rMm();
    }
    boolean isCavity =
        !piece.intersect(HalfSection.of(outline)).isEmpty()
            && piece.intersect(HalfSection.of(outline)).areaMm2() < Math.abs(sum) / 4;
    if (sum > 0 != isCavity) {
      List<PointZr> back = new ArrayList<>(outline);
      Collections.reverse(back);
      return back;
    }
    return outline;
  }
}
