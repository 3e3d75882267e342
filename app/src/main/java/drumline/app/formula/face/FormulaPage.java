package drumline.app.formula.face;

import drumline.app.formula.Answer.Line;
import drumline.app.formula.Formula;
import drumline.app.formula.Input;
import drumline.app.formula.Topic;
import drumline.shop.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Formulas as text: the list, one with its inputs, one with its answer. */
public final class FormulaPage {
  private static final int WIDTH = 100;
  private static final String CAUTION =
      "Planning values: qualified people prove them on the machine, within its maker's limits.";

  private FormulaPage() {}

  /** All formulas by topic, one line each. */
  public static String list(List<Formula> formulas) {
    StringBuilder text = new StringBuilder();
    int width = formulas.stream().mapToInt(f -> f.name().length()).max().orElse(0);
    for (Topic topic : Topic.values()) {
      List<Formula> ofTopic = formulas.stream().filter(f -> f.topic() == topic).toList();
      if (!ofTopic.isEmpty()) {
        text.append(text.isEmpty() ? "" : "\n").append(topic.words()).append('\n');
        ofTopic.forEach(
            f -> text.append("  ").append(padded(f.name(), width)).append(f.title()).append('\n'));
      }
    }
    return text + "\nAsk for one by its name to see its inputs, then give them as key=value.\n";
  }

  /** One formula with its inputs, an example and its source. */
  public static String about(Formula formula, UnitSystem system) {
    FigureWriter writer = new FigureWriter(system, Optional.empty());
    List<List<String>> rows = new ArrayList<>();
    for (Input input : formula.inputs()) {
      rows.add(List.of(input.name(), need(input, writer), input.meaning() + limits(input, writer)));
    }
    return head(formula)
        + table(rows)
        + wrapped("", "Example: drumline formula " + formula.name() + " " + formula.example())
        + "\n"
        + wrapped("", "Source: " + formula.source());
  }

  /** One formula with its answer. */
  public static String answered(AskedFormula asked) {
    Formula formula = asked.formula();
    FigureWriter writer = new FigureWriter(asked.system(), asked.values().currency());
    List<List<String>> rows = new ArrayList<>();
    for (Input input : formula.inputs()) {
      if (asked.values().has(input.name())) {
        Object value = asked.values().value(input.name());
        String mark = asked.own().contains(input.name()) ? "default" : "";
        rows.add(List.of(input.name(), writer.text(input.measure(), value), mark, input.meaning()));
      }
    }
    StringBuilder text = new StringBuilder(head(formula)).append(table(rows));
    text.append(lines(asked.answer().steps(), writer, "  "));
    text.append(lines(asked.answer().results(), writer, "= "));
    text.append('\n');
    asked.warnings().forEach(line -> text.append(wrapped("", "Warning: " + line + ".")));
    text.append(wrapped("", "Source: " + formula.source())).append(CAUTION).append('\n');
    return text.toString();
  }

  /** One input's value with all its digits, so that it can be read again. */
  public static String exact(AskedFormula asked, Input input, UnitSystem system) {
    return new FigureWriter(system, asked.values().currency())
        .exact(input.measure(), asked.values().value(input.name()));
  }

  private static String head(Formula formula) {
    return wrapped("", formula.name() + ": " + formula.title())
        + "\n"
        + wrapped("  ", formula.law())
        + "\n";
  }

  private static String need(Input input, FigureWriter writer) {
    return switch (input.need()) {
      case REQUIRED -> "";
      case SEVERAL -> "one or more, joined by :";
      case OPTIONAL -> "may be left out";
      case STANDARD -> "default " + standard(input, writer);
    };
  }

  private static String standard(Input input, FigureWriter writer) {
    return new ValueReader(UnitSystem.METRIC)
        .find(input, input.standard(), input.name())
        .map(value -> writer.text(input.measure(), value))
        .orElse(input.standard());
  }

  private static String limits(Input input, FigureWriter writer) {
    if (!input.choices().isEmpty()) {
      return "; one of " + String.join(", ", input.choices());
    }
    if (input.measure().suffix().isEmpty() && input.measure().moneyPer().isEmpty()) {
      return "";
    }
    String allowed = input.allowed().words(v -> writer.number(input.measure(), v));
    String usual =
        input
            .usual()
            .map(u -> ", usually " + u.range().words(v -> writer.number(input.measure(), v)))
            .orElse("");
    String unit = input.measure().moneyPer().map(per -> ", money" + per.symbol()).orElse("");
    return "; " + allowed + usual + unit;
  }

  private static String lines(List<Line> lines, FigureWriter writer, String mark) {
    int width = lines.stream().mapToInt(line -> line.words().length()).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (Line line : lines) {
      text.append(mark)
          .append(padded(line.words(), width))
          .append(writer.text(line.measure(), line.value()))
          .append('\n');
    }
    return text.toString();
  }

  private static String table(List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder("  ");
      for (int i = 0; i < row.size() - 1; i++) {
        int column = i;
        int width = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
        line.append(width == 0 ? "" : padded(row.get(i), width));
      }
      text.append(wrapped(line.toString(), row.get(row.size() - 1)));
    }
    return text.append('\n').toString();
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length() + 2);
  }

  /** Words behind a beginning, and under its end where they need more than one line. */
  private static String wrapped(String start, String words) {
    String indent = " ".repeat(start.isEmpty() ? 2 : start.length());
    StringBuilder text = new StringBuilder();
    StringBuilder line = new StringBuilder(start);
    boolean fresh = true;
    for (String word : words.split(" ", -1)) {
      if (!fresh && line.length() + word.length() >= WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
      fresh = false;
    }
    return text.append(line.toString().stripTrailing()).append('\n').toString();
  }
}
