package drumline.shape.clearance;

import drumline.shape.section.HalfSection;
import drumline.shape.tool.ToolPart;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * An area in the whole section plane, both sides of the axis.
 *
 * @param geometry the area, z to the right, r up
 */
record PlaneArea(Geometry geometry) {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A part of a tool; its corners go round it without crossing. */
  static PlaneArea of(ToolPart part) {
    return of(part.outline());
  }

  private static PlaneArea of(List<PointZr> outline) {
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i < outline.size(); i++) {
      ring[i] = new Coordinate(outline.get(i).zMm(), outline.get(i).rMm());
    }
    ring[outline.size()] = ring[0].copy();
    return new PlaneArea(FACTORY.createPolygon(ring));
  }

  /** A turned body: the section above the axis and its mirror image below. */
  static PlaneArea of(HalfSection section) {
    List<Geometry> halves = new ArrayList<>();
    for (int sign : new int[] {1, -1}) {
      for (HalfSection body : section.bodies()) {
        Geometry area = null;
        for (List<PointZr> ring : body.outlines()) {
          List<PointZr> placed =
              ring.stream().map(p -> new PointZr(p.zMm(), sign * p.rMm())).toList();
          Geometry one = of(placed).geometry.buffer(0);
          area = area == null ? one : area.difference(one);
        }
        if (area != null) {
          halves.add(area);
        }
      }
    }
    return new PlaneArea(FACTORY.buildGeometry(halves).buffer(0));
  }

  /** All that the area sweeps when it goes straight from one place to another. */
  static PlaneArea swept(ToolPart part, PointZr from, PointZr to) {
    List<Coordinate> corners = new ArrayList<>();
    for (PointZr point : part.outline()) {
      corners.add(new Coordinate(point.zMm() + from.zMm(), point.rMm() + from.rMm()));
      corners.add(new Coordinate(point.zMm() + to.zMm(), point.rMm() + to.rMm()));
    }
    return new PlaneArea(
        FACTORY.createMultiPointFromCoords(corners.toArray(new Coordinate[0])).convexHull());
  }

  PlaneArea mirrored() {
    Geometry copy = geometry.copy();
    copy.apply((Coordinate c) -> c.setY(-c.getY()));
    copy.geometryChanged();
    return new PlaneArea(copy);
  }

  PlaneArea movedAlong(double byMm) {
    Geometry copy = geometry.copy();
    copy.apply((Coordinate c) -> c.setX(c.getX() + byMm));
    copy.geometryChanged();
    return new PlaneArea(copy);
  }

  /** What both have; empty where they only touch. */
  PlaneArea shared(PlaneArea other) {
    return meets(other)
        ? new PlaneArea(geometry.intersection(other.geometry))
        : new PlaneArea(FACTORY.createPolygon());
  }

  /** Whether both share a place or touch. */
  boolean meets(PlaneArea other) {
    return geometry.getEnvelopeInternal().intersects(other.geometry.getEnvelopeInternal())
        && geometry.intersects(other.geometry);
  }

  double areaMm2() {
    return geometry.getArea();
  }

  Envelope box() {
    return geometry.getEnvelopeInternal();
  }
}
