package drumline.app.formula.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.app.formula.Answer.Line;
import drumline.app.formula.Formula;
import drumline.app.formula.face.AskedFormula;
import drumline.app.formula.face.FormulaCatalogue;
import drumline.shop.quantity.FigureTable;
import drumline.shop.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Examples of the catalogue against worked examples and tables from outside; the file names each.
 */
class WorkedExamplesTest {
  private static final Pattern PAIR = Pattern.compile("(\\w+)=(.*?)(?= \\w+=|$)");

  static List<FigureTable.Row> rows() {
    return FigureTable.read(WorkedExamplesTest.class, "worked.csv").rows();
  }

  private static AskedFormula asked(FigureTable.Row row) {
    Formula formula = FormulaCatalogue.find(row.text("formula")).orElseThrow();
    String values = row.text("values").isEmpty() ? formula.example() : row.text("values");
    List<String> pairs = new ArrayList<>();
    Matcher matcher = PAIR.matcher(values);
    while (matcher.find()) {
      pairs.add(matcher.group());
    }
    AskedFormula asked = AskedFormula.of(formula, pairs, UnitSystem.METRIC);
    assertThat(asked.problems()).as(row.place()).isEmpty();
    return asked;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void answerIsThePublishedOne(FigureTable.Row row) {
    AskedFormula asked = asked(row);
    Line line =
        Stream.concat(asked.answer().results().stream(), asked.answer().steps().stream())
            .filter(one -> one.words().equals(row.text("figure")))
            .findFirst()
            .orElseThrow(() -> new AssertionError(row.place() + ": no such figure"));
    double ours =
        line.value() instanceof BigDecimal money
            ? money.doubleValue()
            : ((Number) line.value()).doubleValue();
    assertThat(ours / row.figure("unit"))
        .as("%s %s [%s]", row.place(), row.text("formula"), row.text("source"))
        .isCloseTo(row.figure("expected"), within(row.figure("tolerance")));
  }

  @Test
  void mostTopicsHaveAFigureFromOutside() {
    Set<String> topics = new HashSet<>();
    rows().stream()
        .filter(row -> Set.of("published", "inputs").contains(row.text("kind")))
        .forEach(
            row ->
                topics.add(
                    FormulaCatalogue.find(row.text("formula")).orElseThrow().topic().words()));
    assertThat(topics)
        .contains(
            "force",
            "turning",
            "drilling",
            "threading",
            "finishing",
            "live tools",
            "slotting",
            "tool life",
            "output and money",
            "standards");
  }
}
