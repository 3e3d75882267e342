package drumline.step.solid;

import drumline.step.exchange.Entity;
import drumline.step.exchange.ExchangeFile;
import drumline.step.exchange.Instance;
import drumline.step.exchange.StepValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which representation an item stands in, in which units, and what product it shows. */
final class Representation {
  private static final List<String> KINDS =
      List.of(
          "ADVANCED_BREP_SHAPE_REPRESENTATION",
          "SHAPE_REPRESENTATION",
          "MANIFOLD_SURFACE_SHAPE_REPRESENTATION",
          "FACETED_BREP_SHAPE_REPRESENTATION",
          "TESSELLATED_SHAPE_REPRESENTATION",
          "REPRESENTATION");

  private final ExchangeFile file;
  private final Map<Integer, Entity> entities = new LinkedHashMap<>();

  Representation(ExchangeFile file) {
    this.file = file;
    for (String kind : KINDS) {
      for (Instance instance : file.all(kind)) {
        if (instance.entities().size() == 1) {
          entities.putIfAbsent(instance.id(), instance.first());
        }
      }
    }
  }

  /** The representation that has an item. */
  Optional<Integer> findOf(int item) {
    return entities.entrySet().stream()
        .filter(e -> e.getValue().refs(1).contains(item))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** Scale of an item's numbers, its own context before any other of the file. */
  Optional<Scale> findScale(int item) {
    UnitReader units = new UnitReader(file);
    Optional<Integer> own = findOf(item);
    Optional<Scale> scale = Optional.empty();
    if (own.isPresent()) {
      scale = units.find(file.at(entity(own.get()), 2));
    }
    if (scale.isEmpty()) {
      for (Instance context : file.all("GLOBAL_UNIT_ASSIGNED_CONTEXT")) {
        scale = scale.or(() -> units.find(context));
      }
    }
    double factor = own.map(this::mappedScale).orElse(1.0);
    return scale.map(found -> found.times(factor));
  }

  private Entity entity(int id) {
    return file.instance(id).first();
  }

  /** Factor with which a representation is mapped into another one, usually 1. */
  private double mappedScale(int representation) {
    for (Instance map : file.all("REPRESENTATION_MAP")) {
      if (map.first().ref(1) == representation) {
        for (Instance item : file.all("MAPPED_ITEM")) {
          if (item.first().ref(1) == map.id()) {
            return factor(file.at(item.first(), 2));
          }
        }
      }
    }
    return 1;
  }

  private static double factor(Instance target) {
    for (Entity entity : target.entities()) {
      if (entity.name().startsWith("CARTESIAN_TRANSFORMATION_OPERATOR")) {
        for (StepValue value : entity.values()) {
          if (value instanceof StepValue.Figure figure && figure.value() > 0) {
            return figure.value();
          }
        }
      }
    }
    return 1;
  }

  /** The product whose shape a representation is, if the file says so. */
  Optional<Entity> findProduct(int representation) {
    List<Integer> same = new ArrayList<>(List.of(representation));
    for (String kind :
        List.of("SHAPE_REPRESENTATION_RELATIONSHIP", "REPRESENTATION_RELATIONSHIP")) {
      for (Instance relation : file.all(kind)) {
        Entity entity = relation.first();
        if (relation.entities().size() == 1 && entity.isRef(2) && entity.isRef(3)) {
          if (entity.ref(3) == representation) {
            same.add(entity.ref(2));
          } else if (entity.ref(2) == representation) {
            same.add(entity.ref(3));
          }
        }
      }
    }
    for (Instance definition : file.all("SHAPE_DEFINITION_REPRESENTATION")) {
      if (same.contains(definition.first().ref(1))) {
        return product(file.at(definition.first(), 0));
      }
    }
    return Optional.empty();
  }

  private Optional<Entity> product(Instance shape) {
    Instance definition = file.at(shape.first(), 2);
    if (!definition.names().startsWith("PRODUCT_DEFINITION")) {
      return Optional.empty();
    }
    Entity first = definition.first();
    return first.isRef(2) && file.at(first, 2).first().values().size() > 2
        ? file.at(file.at(first, 2).first(), 2).find("PRODUCT")
        : Optional.empty();
  }
}
