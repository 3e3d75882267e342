package drumline.shape.section;

import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Material in the half-section: the area between the axis and the surface that, turned once around
 * the axis, is the body. z from the front face, r from the axis, both in mm.
 *
 * <p>Known limit: corners are rounded to a grid of 1 nm, so that surfaces which should touch do.
 */
public final class HalfSection {

  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e6);
  private static final GeometryFactory FACTORY = new GeometryFactory(NANOMETRES);

  /** No material. */
  public static final HalfSection EMPTY = new HalfSection(FACTORY.createPolygon());

  private final Geometry geometry;

  private HalfSection(Geometry geometry) {
    this.geometry = geometry;
  }

  /**
   * The area inside a closed outline; what lies below the axis is left out.
   *
   * @param outline corners in order, either way round, without repeating the first
   * @throws IllegalArgumentException if there are fewer than three corners or a coordinate is not a
   *     finite number
   */
  public static HalfSection of(List<PointZr> outline) {
    return new HalfSection(OutlineReader.read(FACTORY, outline));
  }

  /** The area that a cut sweeps. */
  public static HalfSection of(CutRegion region) {
    return of(region.outline());
  }

  /** All the areas that one operation sweeps, together. */
  public static HalfSection ofAll(List<CutRegion> regions) {
    HalfSection all = EMPTY;
    for (CutRegion region : regions) {
      all = all.union(of(region));
    }
    return all;
  }

  /** What both have. */
  public HalfSection intersect(HalfSection other) {
    return overlay(other, OverlayNG.INTERSECTION);
  }

  /** This without the other. */
  public HalfSection subtract(HalfSection other) {
    return overlay(other, OverlayNG.DIFFERENCE);
  }

  /** What at least one of the two has. */
  public HalfSection union(HalfSection other) {
    return overlay(other, OverlayNG.UNION);
  }

  private HalfSection overlay(HalfSection other, int operation) {
    return areasOf(OverlayNG.overlay(geometry, other.geometry, operation, NANOMETRES));
  }

  /** Lines and points where areas only touch are no material. */
  private static HalfSection areasOf(Geometry result) {
    List<Polygon> areas = new ArrayList<>();
    for (int i = 0; i < result.getNumGeometries(); i++) {
      if (result.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 0) {
        areas.add(polygon);
      }
    }
    return new HalfSection(FACTORY.createMultiPolygon(areas.toArray(new Polygon[0])));
  }

  /** Whether there is no material. */
  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  /** The pieces that do not hang together, front to back. */
  public List<HalfSection> bodies() {
    List<HalfSection> bodies = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (!geometry.getGeometryN(i).isEmpty()) {
        bodies.add(new HalfSection(geometry.getGeometryN(i)));
      }
    }
    bodies.sort(Comparator.comparingDouble(HalfSection::fromZMm));
    return bodies;
  }

  /** All outlines, outer ones and those of enclosed cavities, each without repeating its first. */
  public List<List<PointZr>> outlines() {
    return OutlineReader.outlines(geometry);
  }

  /** Stretches of material along the axis at a distance from it, front to back. */
  public List<Span> spansAtR(double rMm) {
    return SectionLines.alongAxis(geometry, rMm);
  }

  /** Stretches of material across the axis at a place along it, from the axis outwards. */
  public List<Span> spansAtZ(double zMm) {
    return SectionLines.acrossAxis(geometry, zMm);
  }

  /** Corners of the outlines where surfaces meet under an angle; points of arcs are left out. */
  public List<PointZr> sharpCorners() {
    return SectionLines.sharpCorners(outlines());
  }

  /** All that lies between the axis and the outermost surface: what is seen from outside. */
  public HalfSection shadow() {
    List<Geometry> strips = new ArrayList<>();
    for (List<PointZr> outline : outlines()) {
      for (int i = 0; i < outline.size(); i++) {
        PointZr a = outline.get(i);
        PointZr b = outline.get((i + 1) % outline.size());
        if (a.zMm() != b.zMm() && a.rMm() + b.rMm() > 0) {
          PointZr underA = new PointZr(a.zMm(), 0);
          PointZr underB = new PointZr(b.zMm(), 0);
          strips.add(of(List.of(underA, a, b, underB)).geometry);
        }
      }
    }
    return strips.isEmpty() ? EMPTY : areasOf(UnaryUnionNG.union(strips, FACTORY, NANOMETRES));
  }

  /** Area in mm². */
  public double areaMm2() {
    return geometry.getArea();
  }

  /**
   * Volume in mm³ of the body of revolution, V = 2π·∫r dA, exact for straight outlines.
   *
   * <p>Source: [PAPPUS] second theorem of Pappus and Guldin; the polygon's moment by Green's
   * theorem.
   */
  public double volumeMm3() {
    return 2 * Math.PI * PappusMoment.momentMm3(geometry);
  }

  /** Distance in mm of the area's centroid from the axis; 0 without material. */
  public double centroidRMm() {
    return isEmpty() ? 0 : geometry.getCentroid().getY();
  }

  /** Place along the axis of the area's centroid in mm; 0 without material. */
  public double centroidZMm() {
    return isEmpty() ? 0 : geometry.getCentroid().getX();
  }

  /** Frontmost z in mm; 0 without material. */
  public double fromZMm() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMinX();
  }

  /** Backmost z in mm; 0 without material. */
  public double toZMm() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMaxX();
  }

  /** Least distance from the axis in mm; 0 without material. */
  public double innerRMm() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMinY();
  }

  /** Greatest distance from the axis in mm; 0 without material. */
  public double outerRMm() {
    return isEmpty() ? 0 : geometry.getEnvelopeInternal().getMaxY();
  }

  /** Shortest distance in mm to other material; infinite where one of them is empty. */
  public double distanceMm(HalfSection other) {
    return isEmpty() || other.isEmpty()
        ? Double.POSITIVE_INFINITY
        : geometry.distance(other.geometry);
  }

  /** Thickness in mm of the thickest place: diameter of the greatest circle that fits. */
  public double thicknessMm() {
    return InscribedCircle.diameterMm(geometry);
  }

  @Override
  public String toString() {
    return geometry.toText();
  }
}
