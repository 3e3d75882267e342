package drumline.app.formula.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.app.formula.Answer.Line;
import drumline.app.formula.Formula;
import drumline.app.formula.Input;
import drumline.app.formula.Measure;
import drumline.app.formula.face.AskedFormula;
import drumline.app.formula.face.FormulaCatalogue;
import drumline.app.formula.face.FormulaJson;
import drumline.app.formula.face.FormulaPage;
import drumline.shop.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every formula of the catalogue: it computes, in both unit systems, and says what it is. */
class CatalogueTest {
  private static final Pattern PAIR = Pattern.compile("(\\w+)=(.*?)(?= \\w+=|$)");
  private static final Pattern KEY = Pattern.compile("\\[[A-Z0-9.-]+]");

  static List<Formula> formulas() {
    return FormulaCatalogue.all();
  }

  private static List<String> example(Formula formula) {
    List<String> pairs = new ArrayList<>();
    Matcher matcher = PAIR.matcher(formula.example());
    while (matcher.find()) {
      pairs.add(matcher.group());
    }
    return pairs;
  }

  @Test
  void namesAreWordsAndStandOnce() {
    List<String> names = formulas().stream().map(Formula::name).toList();
    assertThat(names).doesNotHaveDuplicates().hasSizeGreaterThan(120);
    assertThat(names).allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
    assertThat(formulas().stream().map(Formula::title)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void itsExampleComputesInMetricAndInchUnits(Formula formula) throws IOException {
    AskedFormula asked = AskedFormula.of(formula, example(formula), UnitSystem.METRIC);
    assertThat(asked.problems()).as(formula.name()).isEmpty();
    assertThat(asked.answer().results()).as(formula.name()).isNotEmpty();
    String metric = FormulaPage.answered(asked);
    assertThat(metric).contains(formula.title(), "Source: ", "= ");
    JsonNode json = new ObjectMapper().readTree(FormulaJson.answered(asked));
    assertThat(json.get("results")).hasSize(asked.answer().results().size());
    AskedFormula inch = AskedFormula.of(formula, inInches(formula, asked), UnitSystem.INCH);
    assertThat(inch.problems()).as(formula.name()).isEmpty();
    assertSame(asked.answer().results(), inch.answer().results());
  }

  /** The example's values as the answer in inch units shows them, to be read again. */
  private static List<String> inInches(Formula formula, AskedFormula asked) {
    List<String> pairs = new ArrayList<>();
    for (Input input : formula.inputs()) {
      if (asked.values().has(input.name()) && !asked.own().contains(input.name())) {
        pairs.add(input.name() + "=" + FormulaPage.exact(asked, input, UnitSystem.INCH));
      }
    }
    return pairs;
  }

  private static void assertSame(List<Line> ones, List<Line> others) {
    assertThat(others).hasSameSizeAs(ones);
    for (int i = 0; i < ones.size(); i++) {
      Object one = ones.get(i).value();
      if (one instanceof Double number && Double.isFinite(number)) {
        assertThat((Double) others.get(i).value())
            .as(ones.get(i).words())
            .isCloseTo(number, within(1e-9 * Math.max(1, Math.abs(number))));
      } else {
        assertThat(others.get(i).value().toString()).isEqualTo(one.toString());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void itsPageNamesEveryInputAndTheExample(Formula formula) {
    String page = FormulaPage.about(formula, UnitSystem.METRIC);
    assertThat(page).contains("Example: drumline formula " + formula.name(), "Source: ");
    assertThat(formula.example().split(" ", -1)).allMatch(pair -> pair.contains("="));
    assertThat(formula.inputs()).allMatch(input -> page.contains("  " + input.name() + " "));
    assertThat(page.lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(140);
    for (Input input : formula.inputs()) {
      if (input.need() == Input.Need.REQUIRED) {
        assertThat(formula.example()).as(formula.name()).contains(input.name() + "=");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void everyNumberRefusesWhatIsNone(Formula formula) {
    for (Input input : formula.inputs()) {
      if (input.measure() == Measure.TEXT) {
        continue;
      }
      for (String bad : new String[] {"NaN", "", "1 furlong", "1e400mm", "--3"}) {
        List<String> pairs = new ArrayList<>(example(formula));
        pairs.removeIf(pair -> pair.startsWith(input.name() + "="));
        pairs.add(input.name() + "=" + bad);
        AskedFormula asked = AskedFormula.of(formula, pairs, UnitSystem.METRIC);
        assertThat(asked.isWrong()).as("%s %s=%s", formula.name(), input.name(), bad).isTrue();
        assertThat(asked.problems().get(0).toLine())
            .contains("formula " + formula.name() + ", " + input.name(), "allowed: ");
      }
    }
  }

  @Test
  void everySourceKeyStandsInTheListOfSources() throws IOException {
    String sources = Files.readString(Path.of("..", "SOURCES.md"));
    for (Formula formula : formulas()) {
      Matcher matcher = KEY.matcher(formula.source());
      while (matcher.find()) {
        assertThat(sources).as(formula.name()).contains(matcher.group());
      }
    }
  }
}
