package drumline.shape.section;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;

/** Turns lists of corners into geometry and back. */
final class OutlineReader {

  private OutlineReader() {}

  static Geometry read(GeometryFactory factory, List<PointZr> outline) {
    if (outline.size() < 3) {
      throw new IllegalArgumentException(
          "outline: " + outline.size() + " corners, allowed: at least 3");
    }
    Coordinate[] corners = new Coordinate[outline.size() + 1];
    for (int i = 0; i < outline.size(); i++) {
      corners[i] = corner(outline.get(i));
      factory.getPrecisionModel().makePrecise(corners[i]);
    }
    corners[outline.size()] = corners[0].copy();
    Geometry area = GeometryFixer.fix(factory.createPolygon(corners));
    return aboveAxis(factory, area);
  }

  private static Coordinate corner(PointZr point) {
    if (!Double.isFinite(point.zMm()) || !Double.isFinite(point.rMm())) {
      throw new IllegalArgumentException("outline: " + point + ", allowed: finite numbers");
    }
    return new Coordinate(point.zMm(), point.rMm());
  }

  private static Geometry aboveAxis(GeometryFactory factory, Geometry area) {
    Envelope box = area.getEnvelopeInternal();
    if (area.isEmpty() || box.getMinY() >= 0) {
      return area;
    }
    if (box.getMaxY() <= 0) {
      return factory.createPolygon();
    }
    Envelope upper = new Envelope(box.getMinX(), box.getMaxX(), 0, box.getMaxY());
    return area.intersection(factory.toGeometry(upper));
  }

  static List<List<PointZr>> outlines(Geometry geometry) {
    List<List<PointZr>> rings = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        rings.add(points(polygon.getExteriorRing()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          rings.add(points(polygon.getInteriorRingN(hole)));
        }
      }
    }
    return rings;
  }

  private static List<PointZr> points(LinearRing ring) {
    Coordinate[] corners = ring.getCoordinates();
    List<PointZr> points = new ArrayList<>();
    for (int i = 0; i < corners.length - 1; i++) {
      points.add(new PointZr(corners[i].getX(), corners[i].getY()));
    }
    return List.copyOf(points);
  }
}
