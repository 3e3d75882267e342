package drumline.step.solid;

import drumline.step.curve.Curve;
import drumline.step.exchange.Entity;
import drumline.step.exchange.ExchangeFile;
import drumline.step.exchange.Instance;
import drumline.step.space.Vec;
import drumline.step.surface.Sided;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads faces with their bounds. */
final class FaceReader {
  private final ExchangeFile file;
  private final PlaceReader places;
  private final CurveReader curves;
  private final SurfaceReader surfaces;
  private final List<String> remarks;
  private final Map<Integer, List<Vec>> edges = new HashMap<>();

  FaceReader(ExchangeFile file, Scale scale, List<String> remarks) {
    this.file = file;
    this.places = new PlaceReader(file, scale);
    this.curves = new CurveReader(places);
    this.surfaces = new SurfaceReader(places, curves);
    this.remarks = remarks;
  }

  /**
   * A face.
   *
   * @param isOut whether the shell's faces point out of the material
   */
  Face read(int id, boolean isOut) {
    Instance instance = file.instance(id);
    if (instance.is("ORIENTED_FACE")) {
      Entity oriented = instance.entity("ORIENTED_FACE");
      int at = oriented.values().size() - 1;
      return read(oriented.ref(at - 1), isOut == oriented.flag(at));
    }
    Entity entity = instance.find("ADVANCED_FACE").orElseGet(() -> instance.entity("FACE_SURFACE"));
    List<Loop> loops = new ArrayList<>();
    for (int bound : entity.refs(1)) {
      loops.add(loop(file.instance(bound).first(), isOut));
    }
    List<Vec> seen = loops.stream().flatMap(loop -> loop.points().stream()).toList();
    Sided sided = surfaces.read(entity.ref(2), seen);
    boolean isSame = entity.flag(3) == sided.isSame();
    return new Face(id, sided.surface(), isSame == isOut, loops);
  }

  private Loop loop(Entity bound, boolean isOut) {
    Instance loop = file.at(bound, 1);
    List<Vec> points = new ArrayList<>();
    switch (loop.first().name()) {
      case "EDGE_LOOP" -> {
        for (int edge : loop.first().refs(1)) {
          List<Vec> way = oriented(file.instance(edge));
          points.addAll(way.subList(0, way.size() - 1));
        }
      }
      case "VERTEX_LOOP" -> points.add(vertex(loop.first().ref(1)));
      case "POLY_LOOP" -> loop.first().refs(1).forEach(p -> points.add(places.point(p)));
      default ->
          throw loop.first()
              .fault("step-loop", "a bound of this kind", "EDGE_LOOP, VERTEX_LOOP or POLY_LOOP");
    }
    if (bound.flag(2) != isOut) {
      Collections.reverse(points);
    }
    return new Loop(points);
  }

  private List<Vec> oriented(Instance instance) {
    Entity entity = instance.entity("ORIENTED_EDGE");
    List<Vec> way = edge(file.at(entity, 3));
    if (entity.flag(4)) {
      return way;
    }
    List<Vec> back = new ArrayList<>(way);
    Collections.reverse(back);
    return back;
  }

  private List<Vec> edge(Instance instance) {
    List<Vec> known = edges.get(instance.id());
    if (known == null) {
      Entity entity = instance.entity("EDGE_CURVE");
      Vec from = vertex(entity.ref(1));
      Vec to = vertex(entity.ref(2));
      Optional<Curve> curve = curves.find(entity.ref(3));
      if (curve.isPresent()) {
        known = curve.get().between(from, to, entity.flag(4));
      } else {
        remarks.add(
            "edge #"
                + instance.id()
                + " runs along "
                + file.at(entity, 3).names()
                + ", a curve that is not read; taken as straight");
        known = List.of(from, to);
      }
      edges.put(instance.id(), known);
    }
    return known;
  }

  private Vec vertex(int id) {
    return places.point(file.instance(id).entity("VERTEX_POINT").ref(1));
  }
}
