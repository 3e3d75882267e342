package drumline.app.formula.face;

import drumline.app.formula.Input;
import drumline.app.formula.Measure;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.Money;
import drumline.shop.quantity.MoneyParsed;
import drumline.shop.quantity.MoneyReader;
import drumline.shop.quantity.NearestWord;
import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads the value of one input; what is wrong with it is collected. */
final class ValueReader {
  private final UnitSystem system;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Currency> currencies = new LinkedHashSet<>();

  ValueReader(UnitSystem system) {
    this.system = system;
  }

  /** What was wrong so far. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Currencies of the money read so far. */
  Set<Currency> currencies() {
    return currencies;
  }

  /** The value in the formula's unit, or nothing where a problem was found. */
  Optional<Object> find(Input input, String text, String where) {
    if (input.need() != Input.Need.SEVERAL) {
      return one(input, text.strip(), where);
    }
    List<Object> all = new ArrayList<>();
    for (String part : text.split(":", -1)) {
      one(input, part.strip(), where).ifPresent(all::add);
    }
    return Optional.of(List.copyOf(all));
  }

  private Optional<Object> one(Input input, String text, String where) {
    Measure measure = input.measure();
    if (measure.moneyPer().isPresent()) {
      return money(input, text, where);
    }
    return switch (measure) {
      case TEXT ->
          text.isEmpty()
              ? refuse("value-missing", where, "nothing", "a text", "")
              : Optional.of(text);
      case CHOICE -> word(input, text, where);
      default -> number(input, text, where);
    };
  }

  private Optional<Object> word(Input input, String text, String where) {
    Optional<String> known =
        input.choices().stream()
            .filter(w -> w.equalsIgnoreCase(text.replace('_', '-')))
            .findFirst();
    if (known.isPresent()) {
      return Optional.of(known.get());
    }
    List<String> near = NearestWord.among(text, input.choices(), 2);
    return refuse(
        "word-unknown",
        where,
        quoted(text),
        String.join(", ", input.choices()),
        near.isEmpty() ? "" : "Maybe " + String.join(" or ", near) + ".");
  }

  private Optional<Object> number(Input input, String text, String where) {
    Measure measure = input.measure();
    if (measure == Measure.SHARE
        && !text.isEmpty()
        && Character.isDigit(text.charAt(text.length() - 1))) {
      return refuse(
          "unit-missing",
          where,
          quoted(text),
          "a share with its sign, such as 8 %",
          "Maybe \"" + text + " %\".");
    }
    Parsed parsed = QuantityReader.read(bare(measure, text), kind(measure), system);
    if (parsed instanceof Parsed.Refused refused) {
      String allowed = measure.kind().isPresent() ? refused.allowed() : "a number" + unit(measure);
      problems.add(
          Problem.error(refused.reason().code(), where, quoted(text), allowed, refused.hint()));
      return Optional.empty();
    }
    double value = ((Parsed.Value) parsed).value() * measure.scale();
    boolean whole = measure != Measure.COUNT || value == Math.rint(value);
    if (!input.allowed().contains(value) || !whole) {
      FigureWriter writer = new FigureWriter(system, Optional.empty());
      String range = input.allowed().words(bound -> writer.number(measure, bound));
      return refuse(
          "value-outside-range",
          where,
          quoted(text),
          measure == Measure.COUNT ? "a whole number, " + range : range,
          "");
    }
    return Optional.of(measure == Measure.COUNT ? (Object) (int) value : (Object) value);
  }

  /** A number without a kind of its own is read as a ratio, with its one unit taken off. */
  private static String bare(Measure measure, String text) {
    if (measure.kind().isPresent()) {
      return text;
    }
    String unit = measure.ownUnit().orElse("");
    String lower = text.toLowerCase(Locale.ROOT);
    return !unit.isEmpty() && lower.endsWith(unit.toLowerCase(Locale.ROOT))
        ? text.substring(0, text.length() - unit.length()).strip()
        : text.endsWith("%") ? text + "%" : text;
  }

  private static QuantityKind kind(Measure measure) {
    return measure.kind().orElse(QuantityKind.RATIO);
  }

  private static String unit(Measure measure) {
    String unit = measure.ownUnit().orElse("");
    return unit.isEmpty() ? "" : " in " + unit;
  }

  private Optional<Object> money(Input input, String text, String where) {
    MoneyParsed parsed = MoneyReader.read(text, input.measure().moneyPer().orElseThrow());
    if (parsed instanceof MoneyParsed.Value value) {
      Money money = value.money();
      if (!input.allowed().contains(money.amount().doubleValue())) {
        String range = input.allowed().words(bound -> Long.toString((long) bound));
        return refuse("value-outside-range", where, quoted(text), range, "");
      }
      currencies.add(money.currency());
      return Optional.of(money.amount());
    }
    problems.add(((Parsed.Refused) parsed).toProblem(where));
    return Optional.empty();
  }

  private Optional<Object> refuse(
      String code, String where, String found, String allowed, String hint) {
    problems.add(Problem.error(code, where, found, allowed, hint));
    return Optional.empty();
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "nothing" : "\"" + text + "\"";
  }
}
