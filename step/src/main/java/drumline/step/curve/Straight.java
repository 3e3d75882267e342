package drumline.step.curve;

import drumline.step.space.Vec;

/**
 * A straight line.
 *
 * @param origin point of it
 * @param direction direction, length 1
 */
public record Straight(Vec origin, Vec direction) implements Curve {
  private static final int STEPS = 4;

  @Override
  public Vec at(double t) {
    return origin.plus(direction.times(t));
  }

  @Override
  public double parameter(Vec point) {
    return point.minus(origin).dot(direction);
  }

  @Override
  public double period() {
    return 0;
  }

  @Override
  public int steps(double from, double to) {
    return STEPS;
  }
}
