package drumline.app.formula.face;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumline.app.formula.Answer.Line;
import drumline.app.formula.Formula;
import drumline.app.formula.Input;
import drumline.app.formula.Measure;
import drumline.shop.quantity.UnitSystem;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Formulas as JSON; every number's name ends in its unit, and units are metric whatever is shown.
 */
public final class FormulaJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private FormulaJson() {}

  /** All formulas: name, topic, title. */
  public static String list(List<Formula> formulas) {
    ArrayNode all = MAPPER.createArrayNode();
    for (Formula formula : formulas) {
      all.addObject()
          .put("formula", formula.name())
          .put("topic", formula.topic().words())
          .put("title", formula.title());
    }
    return write(all);
  }

  /** One formula with its inputs. */
  public static String about(Formula formula) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("formula", formula.name());
    node.put("title", formula.title());
    node.put("law", formula.law());
    ArrayNode inputs = node.putArray("inputs");
    for (Input input : formula.inputs()) {
      ObjectNode one = inputs.addObject();
      one.put("name", input.name());
      one.put("meaning", input.meaning());
      one.put("key", input.name() + input.measure().suffix());
      limits(one, input);
      one.put("need", input.need().name().toLowerCase(Locale.ROOT));
      if (!input.standard().isEmpty()) {
        one.put("default", input.standard());
      }
      if (!input.choices().isEmpty()) {
        input.choices().forEach(one.withArray("choices")::add);
      }
    }
    node.put("example", formula.example());
    node.put("source", formula.source());
    return write(node);
  }

  /** The allowed and the usual range in metric units, where a number is asked for. */
  private static void limits(ObjectNode node, Input input) {
    Measure measure = input.measure();
    if (!input.choices().isEmpty() || measure == Measure.TEXT) {
      return;
    }
    if (measure.moneyPer().isPresent()) {
      node.put("unit", "money" + measure.moneyPer().get().symbol());
      return;
    }
    FigureWriter writer = new FigureWriter(UnitSystem.METRIC, Optional.empty());
    node.put("allowed", input.allowed().words(v -> writer.number(measure, v)));
    input
        .usual()
        .ifPresent(u -> node.put("usual", u.range().words(v -> writer.number(measure, v))));
  }

  /** One formula with its answer. */
  public static String answered(AskedFormula asked) {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("formula", asked.formula().name());
    ObjectNode inputs = node.putObject("inputs");
    for (Input input : asked.formula().inputs()) {
      if (asked.values().has(input.name())) {
        put(inputs, input.name(), input.measure(), asked.values().value(input.name()));
      }
    }
    asked.own().forEach(node.putArray("defaults")::add);
    lines(node.putArray("steps"), asked.answer().steps());
    lines(node.putArray("results"), asked.answer().results());
    asked
        .values()
        .currency()
        .map(Currency::getCurrencyCode)
        .ifPresent(c -> node.put("currency", c));
    asked.warnings().forEach(node.putArray("warnings")::add);
    node.put("source", asked.formula().source());
    return write(node);
  }

  private static void lines(ArrayNode nodes, List<Line> lines) {
    for (Line line : lines) {
      ObjectNode node = nodes.addObject();
      node.put("what", line.words());
      put(node, "value", line.measure(), line.value());
    }
  }

  private static void put(ObjectNode node, String name, Measure measure, Object value) {
    String key = name + measure.suffix();
    if (value instanceof List<?> several) {
      ArrayNode all = node.putArray(key);
      several.forEach(one -> all.addPOJO(one));
    } else if (value instanceof Double number && !Double.isFinite(number)) {
      node.putNull(key);
    } else {
      node.putPOJO(key, value);
    }
  }

  private static String write(Object node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the formula cannot be written as JSON", e);
    }
  }
}
