package drumline.step.solid;

import drumline.step.exchange.Entity;
import drumline.step.exchange.ExchangeFile;
import drumline.step.exchange.Instance;
import drumline.step.exchange.StepValue;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the units that a representation's numbers are in. */
final class UnitReader {
  private static final int DEEPEST = 20;
  private static final Map<String, Double> PREFIXES =
      Map.ofEntries(
          Map.entry("EXA", 1e18),
          Map.entry("PETA", 1e15),
          Map.entry("TERA", 1e12),
          Map.entry("GIGA", 1e9),
          Map.entry("MEGA", 1e6),
          Map.entry("KILO", 1e3),
          Map.entry("HECTO", 1e2),
          Map.entry("DECA", 1e1),
          Map.entry("DECI", 1e-1),
          Map.entry("CENTI", 1e-2),
          Map.entry("MILLI", 1e-3),
          Map.entry("MICRO", 1e-6),
          Map.entry("NANO", 1e-9),
          Map.entry("PICO", 1e-12));

  private final ExchangeFile file;

  UnitReader(ExchangeFile file) {
    this.file = file;
  }

  /** The scale of a context; empty where it names no unit of length. Angles are else radians. */
  Optional<Scale> find(Instance context) {
    Optional<Entity> units = context.find("GLOBAL_UNIT_ASSIGNED_CONTEXT");
    if (units.isEmpty()) {
      return Optional.empty();
    }
    int at = units.get().values().size() > 1 ? units.get().values().size() - 1 : 0;
    OptionalDouble length = OptionalDouble.empty();
    double angle = 1;
    for (int id : units.get().refs(at)) {
      Instance unit = file.instance(id);
      if (unit.is("LENGTH_UNIT")) {
        length = OptionalDouble.of(1000 * factor(unit, 0));
      } else if (unit.is("PLANE_ANGLE_UNIT")) {
        angle = factor(unit, 0);
      }
    }
    return length.isEmpty()
        ? Optional.empty()
        : Optional.of(new Scale(length.getAsDouble(), angle));
  }

  /** One unit in metres or radians. */
  private double factor(Instance unit, int depth) {
    Optional<Entity> converted = unit.find("CONVERSION_BASED_UNIT");
    if (depth > DEEPEST) {
      throw unit.first().fault("step-unit", "units defined by each other", "an SI unit at the end");
    }
    if (converted.isPresent()) {
      Entity measure = measure(file.at(converted.get(), converted.get().values().size() - 1));
      return measure.figure(0) * factor(file.at(measure, 1), depth + 1);
    }
    Entity si = unit.entity("SI_UNIT");
    int prefixAt = Math.max(0, si.values().size() - 2);
    return si.value(prefixAt) instanceof StepValue.Word word
        ? Optional.ofNullable(PREFIXES.get(word.word()))
            .orElseThrow(() -> si.fault("step-unit", word.word(), "a prefix of the SI"))
        : 1;
  }

  private static Entity measure(Instance instance) {
    return instance.find("MEASURE_WITH_UNIT").orElseGet(instance::first);
  }
}
