package drumline.app.formula;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a formula reckons with: every input's value in the formula's own unit.
 *
 * @param byName value of each input that is there: Double, Integer for counts, String for words and
 *     choices, BigDecimal for money, a list of the same for several
 * @param currency currency of all money in it, if there is any
 */
public record Values(Map<String, Object> byName, Optional<Currency> currency) {

  /** Copies the map. */
  public Values {
    byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
  }

  /** Whether an input is there. */
  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /** A number in the unit of its measure. */
  public double num(String name) {
    return ((Number) value(name)).doubleValue();
  }

  /** A number, or another one where the input was left out. */
  public double num(String name, double otherwise) {
    return has(name) ? num(name) : otherwise;
  }

  /** A whole number. */
  public int count(String name) {
    return ((Number) value(name)).intValue();
  }

  /** An amount of money. */
  public BigDecimal money(String name) {
    return (BigDecimal) value(name);
  }

  /** A text. */
  public String text(String name) {
    return (String) value(name);
  }

  /** One of several words, as the constant it stands for. */
  public <E extends Enum<E>> E choice(String name, Class<E> type) {
    return Enum.valueOf(type, text(name).toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** Several numbers. */
  public List<Double> nums(String name) {
    return ((List<?>) value(name)).stream().map(v -> ((Number) v).doubleValue()).toList();
  }

  /** Several amounts of money. */
  public List<BigDecimal> moneys(String name) {
    return ((List<?>) value(name)).stream().map(BigDecimal.class::cast).toList();
  }

  /** An input's value, whatever it is; it must be there. */
  public Object value(String name) {
    Object value = byName.get(name);
    if (value == null) {
      throw new IllegalStateException(
          "the formula asks for " + name + ", which it did not declare");
    }
    return value;
  }
}
