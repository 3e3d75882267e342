package drumline.shape.section;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * First moment of an area about the axis, ∫r dA = |Σ (r₁ + r₂)·(z₁·r₂ − z₂·r₁)|/6 over the sides of
 * its outline.
 *
 * <p>Source: [PAPPUS] Green's theorem applied to a polygon.
 */
final class PappusMoment {

  private PappusMoment() {}

  static double momentMm3(Geometry geometry) {
    double momentMm3 = 0;
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        momentMm3 += ring(polygon.getExteriorRing());
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          momentMm3 -= ring(polygon.getInteriorRingN(hole));
        }
      }
    }
    return momentMm3;
  }

  private static double ring(LinearRing ring) {
    Coordinate[] corners = ring.getCoordinates();
    double sum = 0;
    for (int i = 0; i < corners.length - 1; i++) {
      double z1 = corners[i].getX() - corners[0].getX();
      double z2 = corners[i + 1].getX() - corners[0].getX();
      double r1 = corners[i].getY();
      double r2 = corners[i + 1].getY();
      sum += (r1 + r2) * (z1 * r2 - z2 * r1);
    }
    return Math.abs(sum) / 6;
  }
}
