package drumline.step.curve;

import drumline.step.space.Frame;
import drumline.step.space.Vec;

/**
 * A circle, ellipse, hyperbola or parabola.
 *
 * @param kind which
 * @param frame its placement
 * @param a half axis along the frame's x; focal distance of a parabola
 * @param b half axis along the frame's y; not used by a parabola
 */
public record Conic(Kind kind, Frame frame, double a, double b) implements Curve {
  private static final double STEP_RAD = Math.toRadians(7.5);

  /** Kinds of conics. */
  public enum Kind {
    /** Circle or ellipse. */
    ELLIPSE,
    /** One branch of a hyperbola. */
    HYPERBOLA,
    /** Parabola. */
    PARABOLA
  }

  /** A circle. */
  public static Conic circle(Frame frame, double radiusMm) {
    return new Conic(Kind.ELLIPSE, frame, radiusMm, radiusMm);
  }

  /** Whether it is a circle. */
  public boolean isCircle() {
    return kind == Kind.ELLIPSE && Math.abs(a - b) < 1e-9;
  }

  @Override
  public Vec at(double t) {
    return switch (kind) {
      case ELLIPSE -> frame.world(new Vec(a * Math.cos(t), b * Math.sin(t), 0));
      case HYPERBOLA -> frame.world(new Vec(a * Math.cosh(t), b * Math.sinh(t), 0));
      case PARABOLA -> frame.world(new Vec(a * t * t, 2 * a * t, 0));
    };
  }

  @Override
  public double parameter(Vec point) {
    Vec l = frame.local(point);
    return switch (kind) {
      case ELLIPSE -> Math.atan2(l.y() / b, l.x() / a);
      case HYPERBOLA -> {
        double s = l.y() / b;
        yield Math.log(s + Math.sqrt(s * s + 1));
      }
      case PARABOLA -> l.y() / (2 * a);
    };
  }

  @Override
  public double period() {
    return kind == Kind.ELLIPSE ? 2 * Math.PI : 0;
  }

  @Override
  public int steps(double from, double to) {
    return kind == Kind.ELLIPSE
        ? Math.max(4, (int) Math.ceil(Math.abs(to - from) / STEP_RAD - 1e-9))
        : 16;
  }
}
