package drumline.shape.section;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** Straight lines through a section and the corners of its outlines. */
final class SectionLines {

  /** Chords of arcs turn by at most 5°, so a sharper turn is a corner. */
  private static final double SMOOTH_TURN_RAD = Math.toRadians(9);

  private SectionLines() {}

  static List<Span> alongAxis(Geometry geometry, double rMm) {
    Envelope box = geometry.getEnvelopeInternal();
    return spans(
        geometry, new Coordinate(box.getMinX() - 1, rMm), new Coordinate(box.getMaxX() + 1, rMm));
  }

  static List<Span> acrossAxis(Geometry geometry, double zMm) {
    Envelope box = geometry.getEnvelopeInternal();
    return spans(geometry, new Coordinate(zMm, -1), new Coordinate(zMm, box.getMaxY() + 1));
  }

  private static List<Span> spans(Geometry geometry, Coordinate from, Coordinate to) {
    List<Span> spans = new ArrayList<>();
    if (geometry.isEmpty()) {
      return spans;
    }
    LineString line = geometry.getFactory().createLineString(new Coordinate[] {from, to});
    boolean isAlong = from.getY() == to.getY();
    Geometry cut = geometry.intersection(line);
    for (int i = 0; i < cut.getNumGeometries(); i++) {
      Envelope box = cut.getGeometryN(i).getEnvelopeInternal();
      double begin = isAlong ? box.getMinX() : box.getMinY();
      double end = isAlong ? box.getMaxX() : box.getMaxY();
      if (end > begin) {
        spans.add(new Span(begin, end));
      }
    }
    spans.sort(Comparator.comparingDouble(Span::fromMm));
    return spans;
  }

  static List<PointZr> sharpCorners(List<List<PointZr>> outlines) {
    List<PointZr> corners = new ArrayList<>();
    for (List<PointZr> outline : outlines) {
      int count = outline.size();
      for (int i = 0; i < count; i++) {
        PointZr before = outline.get((i + count - 1) % count);
        PointZr after = outline.get((i + 1) % count);
        if (turnRad(before, outline.get(i), after) > SMOOTH_TURN_RAD) {
          corners.add(outline.get(i));
        }
      }
    }
    return corners;
  }

  private static double turnRad(PointZr before, PointZr at, PointZr after) {
    double z1 = at.zMm() - before.zMm();
    double r1 = at.rMm() - before.rMm();
    double z2 = after.zMm() - at.zMm();
    double r2 = after.rMm() - at.rMm();
    return Math.abs(Math.atan2(z1 * r2 - r1 * z2, z1 * z2 + r1 * r2));
  }
}
