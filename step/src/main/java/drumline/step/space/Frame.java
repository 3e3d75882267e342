package drumline.step.space;

/**
 * A right-handed placement.
 *
 * @param origin its point
 * @param x first direction, length 1
 * @param y second direction, length 1
 * @param z third direction, length 1
 */
public record Frame(Vec origin, Vec x, Vec y, Vec z) {

  /** A placement by its axis and a direction that is made square to it. */
  public static Frame of(Vec origin, Vec axis, Vec nearX) {
    Vec z = axis.unit();
    Vec across = nearX.minus(z.times(nearX.dot(z)));
    Vec x = across.length() > 1e-9 ? across.unit() : z.square();
    return new Frame(origin, x, z.cross(x), z);
  }

  /** A placement by its axis alone. */
  public static Frame of(Vec origin, Vec axis) {
    return of(origin, axis, axis.square());
  }

  /** A point's coordinates in this placement. */
  public Vec local(Vec point) {
    Vec d = point.minus(origin);
    return new Vec(d.dot(x), d.dot(y), d.dot(z));
  }

  /** The point that has these coordinates in this placement. */
  public Vec world(Vec local) {
    return origin.plus(x.times(local.x())).plus(y.times(local.y())).plus(z.times(local.z()));
  }

  /** Distance of a point from the axis. */
  public double radius(Vec point) {
    Vec l = local(point);
    return Math.hypot(l.x(), l.y());
  }

  /** Place of a point along the axis. */
  public double along(Vec point) {
    return point.minus(origin).dot(z);
  }

  /** Direction from the axis to a point, length 1; zero on the axis. */
  public Vec radial(Vec point) {
    Vec d = point.minus(origin);
    return d.minus(z.times(d.dot(z))).unit();
  }

  /** Whether another axis is the same line, either way round. */
  public boolean isCoaxial(Frame other, double angleRad, double offMm) {
    return isParallel(other.z, angleRad) && radius(other.origin) <= offMm;
  }

  /** Whether a direction is the axis's, either way round. */
  public boolean isParallel(Vec direction, double angleRad) {
    return z.cross(direction.unit()).length() <= angleRad;
  }

  /** Whether a direction is square to the axis. */
  public boolean isSquare(Vec direction, double angleRad) {
    return Math.abs(z.dot(direction.unit())) <= angleRad;
  }
}
