package drumline.step.solid;

import drumline.step.exchange.Entity;
import drumline.step.exchange.ExchangeFile;
import drumline.step.exchange.Instance;
import drumline.step.space.Frame;
import drumline.step.space.Vec;

/**
 * Reads points, directions and placements, lengths turned into mm.
 *
 * @param file the file
 * @param scale what its numbers mean
 */
record PlaceReader(ExchangeFile file, Scale scale) {

  Vec point(int id) {
    return vec(file.instance(id).entity("CARTESIAN_POINT"), 1).times(scale.lengthMm());
  }

  Vec direction(int id) {
    return vec(file.instance(id).entity("DIRECTION"), 1).unit();
  }

  /** Direction of a vector, length 1. */
  Vec vector(int id) {
    return direction(file.instance(id).entity("VECTOR").ref(1));
  }

  private static Vec vec(Entity entity, int index) {
    double[] c = entity.figures(index);
    Vec vec = new Vec(c.length > 0 ? c[0] : 0, c.length > 1 ? c[1] : 0, c.length > 2 ? c[2] : 0);
    if (!Double.isFinite(vec.dot(vec))) {
      throw entity.fault("step-number", "a number too large", "finite coordinates");
    }
    return vec;
  }

  /** A placement with two directions, or with its axis alone. */
  Frame frame(int id) {
    Instance instance = file.instance(id);
    Entity entity =
        instance.find("AXIS1_PLACEMENT").orElseGet(() -> instance.entity("AXIS2_PLACEMENT_3D"));
    Vec origin = point(entity.ref(1));
    Vec z = entity.isRef(2) ? direction(entity.ref(2)) : new Vec(0, 0, 1);
    if (!(z.length() > 0.5)) {
      throw entity.fault("step-direction", "an axis without direction", "a direction");
    }
    return entity.isRef(3)
        ? Frame.of(origin, z, direction(entity.ref(3)))
        : Frame.of(origin, z, new Vec(1, 0, 0));
  }

  double length(Entity entity, int index) {
    double value = entity.figure(index) * scale.lengthMm();
    if (!Double.isFinite(value)) {
      throw entity.fault("step-number", "a number too large", "a finite length");
    }
    return value;
  }

  double angleRad(Entity entity, int index) {
    return entity.figure(index) * scale.angleRad();
  }
}
