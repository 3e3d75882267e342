package drumline.app.formula.face;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.Input;
import drumline.app.formula.RefusedValue;
import drumline.app.formula.Values;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.NearestWord;
import drumline.shop.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A formula with the values a person gave it, computed.
 *
 * @param formula the formula
 * @param system metric or inch: what bare numbers mean, and how the answer is shown
 * @param values all values, those of their own included
 * @param own names of the inputs that were not given and have a value of their own
 * @param answer the answer; empty figures when something is wrong
 * @param problems what is wrong with the values, all at once
 */
public record AskedFormula(
    Formula formula,
    UnitSystem system,
    Values values,
    Set<String> own,
    Answer answer,
    List<Problem> problems) {

  private static final Pattern REFUSAL =
      Pattern.compile(
          "(\\w[^;]*?)(?: is |: )(.*?)(?:; allowed is |; allowed: |, allowed: )(.*?)\\.?");

  /** Copies the lists. */
  public AskedFormula {
    problems = List.copyOf(problems);
  }

  /** Whether anything is wrong, so that there is no answer. */
  public boolean isWrong() {
    return !problems.isEmpty();
  }

  /**
   * Reads the values and computes.
   *
   * @param pairs texts of the form {@code key=value}
   */
  public static AskedFormula of(Formula formula, List<String> pairs, UnitSystem system) {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> given = pairs(formula, pairs, problems);
    ValueReader reader = new ValueReader(system);
    ValueReader ownReader = new ValueReader(UnitSystem.METRIC);
    Map<String, Object> byName = new LinkedHashMap<>();
    Set<String> own = new LinkedHashSet<>();
    for (Input input : formula.inputs()) {
      String text = given.get(input.name());
      String where = place(formula, input.name());
      if (text != null) {
        reader.find(input, text, where).ifPresent(value -> byName.put(input.name(), value));
      } else if (input.need() == Input.Need.STANDARD) {
        own.add(input.name());
        ownReader
            .find(input, input.standard(), where)
            .ifPresent(value -> byName.put(input.name(), value));
      } else if (input.need() != Input.Need.OPTIONAL) {
        problems.add(missing(formula, input, system));
      }
    }
    problems.addAll(reader.problems());
    problems.addAll(ownReader.problems());
    return computed(formula, system, byName, own, reader.currencies(), problems);
  }

  private static AskedFormula computed(
      Formula formula,
      UnitSystem system,
      Map<String, Object> byName,
      Set<String> own,
      Set<Currency> currencies,
      List<Problem> problems) {
    if (currencies.size() > 1) {
      problems.add(
          Problem.error(
              "currencies-differ",
              "formula " + formula.name(),
              "several currencies: " + currencies,
              "one currency for all money",
              ""));
    }
    Values values = new Values(byName, currencies.stream().findFirst());
    Answer answer = Answer.NONE;
    if (problems.isEmpty()) {
      try {
        answer = formula.function().apply(values);
      } catch (RefusedValue refusal) {
        problems.add(refusal.problemAt(formula.name()));
      } catch (IllegalArgumentException refusal) {
        problems.add(refused(formula, refusal));
      }
    }
    return new AskedFormula(formula, system, values, own, answer, problems);
  }

  private static Map<String, String> pairs(
      Formula formula, List<String> pairs, List<Problem> problems) {
    List<String> known = formula.inputs().stream().map(Input::name).toList();
    Map<String, String> given = new LinkedHashMap<>();
    for (String pair : pairs) {
      int sign = pair.indexOf('=');
      String key = sign < 0 ? pair : pair.substring(0, sign).strip();
      Optional<String> name = known.stream().filter(k -> k.equalsIgnoreCase(key)).findFirst();
      if (sign < 0) {
        problems.add(
            Problem.error(
                "pair-expected",
                "formula " + formula.name(),
                "\"" + pair + "\"",
                "key=value, such as " + formula.example().split(" ", 2)[0],
                ""));
      } else if (name.isEmpty()) {
        List<String> near = NearestWord.among(key, known, 2);
        problems.add(
            Problem.error(
                "key-unknown",
                place(formula, key),
                "no such input",
                String.join(", ", known),
                near.isEmpty() ? "" : "Maybe " + String.join(" or ", near) + "."));
      } else if (given.putIfAbsent(name.get(), pair.substring(sign + 1)) != null) {
        problems.add(
            Problem.error("key-twice", place(formula, key), "given twice", "one value", ""));
      }
    }
    return given;
  }

  private static Problem missing(Formula formula, Input input, UnitSystem system) {
    FigureWriter writer = new FigureWriter(system, Optional.empty());
    boolean words = input.measure().moneyPer().isPresent() || input.measure().suffix().isEmpty();
    String range =
        words ? "" : ", " + input.allowed().words(v -> writer.number(input.measure(), v));
    return Problem.error(
        "value-missing",
        place(formula, input.name()),
        "no value",
        input.meaning() + range,
        "Maybe " + exampleOf(formula, input) + ".");
  }

  private static String exampleOf(Formula formula, Input input) {
    for (String pair : formula.example().split(" ", -1)) {
      if (pair.startsWith(input.name() + "=")) {
        return pair;
      }
    }
    return input.name() + "=…";
  }

  /** What a formula's own check said, with the input's key where it is the input's. */
  private static Problem refused(Formula formula, IllegalArgumentException refusal) {
    String message = String.valueOf(refusal.getMessage());
    Matcher matcher = REFUSAL.matcher(message);
    if (!matcher.matches()) {
      return Problem.error(
          "value-outside-range", "formula " + formula.name(), message, "values that fit", "");
    }
    String name = matcher.group(1);
    String key =
        formula.inputs().stream()
            .filter(input -> name.equals(input.name() + input.measure().suffix()))
            .map(Input::name)
            .findFirst()
            .orElse(name);
    return Problem.error(
        "value-outside-range", place(formula, key), matcher.group(2), matcher.group(3), "");
  }

  private static String place(Formula formula, String key) {
    return "formula " + formula.name() + ", " + key;
  }

  /** Usual ranges that the values left and notes of the formula, one sentence each. */
  public List<String> warnings() {
    FigureWriter writer = new FigureWriter(system, Optional.empty());
    List<String> lines = new ArrayList<>();
    for (Input input : formula.inputs()) {
      if (input.usual().isPresent() && values.has(input.name())) {
        double value = values.num(input.name());
        Input.Usual usual = input.usual().get();
        if (!usual.range().contains(value)) {
          String range = usual.range().words(v -> writer.number(input.measure(), v));
          String found = writer.number(input.measure(), value);
          lines.add(
              String.format(
                  "%s %s is outside the usual range (%s): %s",
                  input.name(), found, range, usual.consequence()));
        }
      }
    }
    answer.notes().notes().forEach(note -> lines.add(note.toLine()));
    return List.copyOf(lines);
  }
}
