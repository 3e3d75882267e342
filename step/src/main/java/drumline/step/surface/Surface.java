package drumline.step.surface;

import drumline.step.space.Frame;
import drumline.step.space.Vec;

/** A surface without its bounds. */
public sealed interface Surface {

  /** Direction away from the surface's own inner side at a point on it, length 1. */
  Vec normal(Vec point);

  /** What it is called in a message. */
  String words();

  /** A plane; its normal is the frame's z. */
  record Plane(Frame frame) implements Surface {
    @Override
    public Vec normal(Vec point) {
      return frame.z();
    }

    @Override
    public String words() {
      return "plane";
    }
  }

  /** A cylinder around the frame's z. */
  record Cylinder(Frame frame, double radiusMm) implements Surface {
    @Override
    public Vec normal(Vec point) {
      return frame.radial(point);
    }

    @Override
    public String words() {
      return String.format(java.util.Locale.ROOT, "cylinder Ø%.3f mm", 2 * radiusMm);
    }
  }

  /** A cone around the frame's z, radius at the origin, growing along z with the half angle. */
  record Cone(Frame frame, double radiusMm, double halfAngleRad) implements Surface {
    @Override
    public Vec normal(Vec point) {
      double side = radiusMm + frame.along(point) * Math.tan(halfAngleRad) < -1e-9 ? -1 : 1;
      return frame
          .radial(point)
          .times(Math.cos(halfAngleRad))
          .minus(frame.z().times(side * Math.sin(halfAngleRad)))
          .unit();
    }

    /** Place of the tip along the frame's z. */
    public double apexMm() {
      return -radiusMm / Math.tan(halfAngleRad);
    }

    @Override
    public String words() {
      return String.format(
          java.util.Locale.ROOT, "cone of %.1f° half angle", Math.toDegrees(halfAngleRad));
    }
  }

  /** A ball around the frame's origin. */
  record Sphere(Frame frame, double radiusMm) implements Surface {
    @Override
    public Vec normal(Vec point) {
      return point.minus(frame.origin()).unit();
    }

    @Override
    public String words() {
      return String.format(java.util.Locale.ROOT, "sphere R%.3f mm", radiusMm);
    }
  }

  /** A ring around the frame's z. */
  record Torus(Frame frame, double radiusMm, double tubeMm) implements Surface {
    @Override
    public Vec normal(Vec point) {
      Vec middle = frame.origin().plus(frame.radial(point).times(radiusMm));
      return point.minus(middle).unit();
    }

    @Override
    public String words() {
      return String.format(java.util.Locale.ROOT, "ring of tube radius %.3f mm", tubeMm);
    }
  }

  /** A turned surface whose meridian is neither straight nor an arc. */
  record Lathe(Frame frame, Meridian meridian) implements Surface {
    @Override
    public Vec normal(Vec point) {
      double[] zr = meridian.normal(frame.along(point), frame.radius(point));
      return frame.z().times(zr[0]).plus(frame.radial(point).times(zr[1])).unit();
    }

    @Override
    public String words() {
      return "turned free form";
    }
  }

  /** Anything else: its name in the file, and a normal where one is known. */
  record FreeForm(String entity, java.util.function.UnaryOperator<Vec> normals) implements Surface {
    @Override
    public Vec normal(Vec point) {
      return normals.apply(point);
    }

    @Override
    public String words() {
      return "free form (" + entity + ")";
    }
  }
}
