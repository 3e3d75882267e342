package drumline.step.space;

/**
 * A point in mm, or a direction without unit.
 *
 * @param x along the first axis
 * @param y along the second axis
 * @param z along the third axis
 */
public record Vec(double x, double y, double z) {

  /** The origin. */
  public static final Vec ZERO = new Vec(0, 0, 0);

  /** Sum. */
  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  /** Difference. */
  public Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  /** Multiple. */
  public Vec times(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  /** Scalar product. */
  public double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /** Vector product. */
  public Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /** Length. */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /** Distance of two points. */
  public double distance(Vec o) {
    return minus(o).length();
  }

  /** The same direction with length 1; zero stays zero. */
  public Vec unit() {
    double length = length();
    return length > 0 ? times(1 / length) : this;
  }

  /** Some direction square to this one. */
  public Vec square() {
    Vec other = Math.abs(x) < 0.6 * length() ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    return other.minus(times(other.dot(this) / dot(this))).unit();
  }
}
