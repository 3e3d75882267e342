package drumline.shape.section;

import org.locationtech.jts.geom.Geometry;

/** The greatest circle that fits into an area, found by shrinking the area until it vanishes. */
final class InscribedCircle {

  private static final int HALVINGS = 24;

  private InscribedCircle() {}

  static double diameterMm(Geometry geometry) {
    double fitsMm = 0;
    double tooBigMm = Math.sqrt(geometry.getArea() / Math.PI) * 1.001;
    for (int i = 0; i < HALVINGS && tooBigMm - fitsMm > 1e-6; i++) {
      double middleMm = (fitsMm + tooBigMm) / 2;
      if (geometry.buffer(-middleMm).isEmpty()) {
        tooBigMm = middleMm;
      } else {
        fitsMm = middleMm;
      }
    }
    return fitsMm + tooBigMm;
  }
}
