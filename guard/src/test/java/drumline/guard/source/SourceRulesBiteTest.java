package drumline.guard.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule over a text that breaks it, and over its nearest neighbour that does not. */
class SourceRulesBiteTest {

  private static JavaSource shop(String text) {
    return JavaSource.parse("shop/src/main/java/drumline/shop/Sample.java", text);
  }

  private static JavaSource cutting(String text) {
    return JavaSource.parse("cutting/src/main/java/drumline/cutting/Sample.java", text);
  }

  @Test
  void emptyWordsInTypeNames() {
    assertThat(new TypeNames().breaches(shop("package drumline.shop;\nclass ToolManager {}")))
        .containsExactly(
            "shop/src/main/java/drumline/shop/Sample.java:2: the word Manager in ToolManager");
    assertThat(new TypeNames().breaches(shop("record Tool() { enum DataKind { A } }"))).hasSize(1);
    assertThat(new TypeNames().breaches(shop("record CommonSpeed() {}"))).isEmpty();
    assertThat(new TypeNames().breaches(shop("record CommonSpeedData() {}"))).hasSize(1);
    assertThat(new TypeNames().breaches(shop("record Database() { class Based {} }"))).isEmpty();
  }

  @Test
  void packagesOfAnotherModule() {
    assertThat(new Packages().breaches(shop("package drumline.cutting;")))
        .containsExactly(
            "shop/src/main/java/drumline/shop/Sample.java:1:"
                + " package drumline.cutting is not in drumline.shop");
    assertThat(new Packages().breaches(shop("package drumline.shopfloor;"))).hasSize(1);
    assertThat(new Packages().breaches(shop("package drumline.shop.part;"))).isEmpty();
  }

  @Test
  void longMethods() {
    String body = "int i = 0;\n".repeat(60);
    assertThat(new MethodLength().breaches(shop("class Sample {\nvoid cut() {\n" + body + "}\n}")))
        .containsExactly("shop/src/main/java/drumline/shop/Sample.java:2: cut has 62 lines");
    assertThat(new MethodLength().breaches(shop("class Sample {\nvoid cut() {\nint i = 0;\n}\n}")))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "record Cut(double feed) {}",
        "record Cut(double depthmm) {}",
        "record Cut(double n) {}",
        "record Cut(@Nullable Double depth) {}",
        "record Cut(double[] depths) {}",
        "record Cut(List<Double> depths) {}",
        "record Cut(Map<String, Long> times) {}",
        "record Cut(OptionalDouble depth) {}",
        "record Cut(int spindles) {}",
        "record Cut(double CIRCUMFERENCE) {}",
        "class Cut { record Pass(long time) {} }",
        "class Cut { public double force(double area) { return 0; } }",
        "class Cut { public Cut(double depth) {} }",
        "interface Cut { double force(double area); }"
      })
  void numbersWithoutUnit(String text) {
    assertThat(new UnitSuffix().breaches(shop(text)))
        .singleElement()
        .asString()
        .startsWith("shop/src/main/java/drumline/shop/Sample.java:1: the number ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "record Cut(double feedMmPerRev, double revPerMin, int position, BigDecimal price) {}",
        "record Cut(Map<Integer, String> byPosition, List<Double> depthsMm, double[] timesS) {}",
        "class Cut { private record Pass(double depth) {} }",
        "record Cut(int spindleCount, double ratio) { static final double HALF = 0.5; }",
        "class Cut { private double force(double area) { return area; } }",
        "class Cut { double force(double area) { return area; } }"
      })
  void numbersWithUnitOrOutOfSight(String text) {
    assertThat(new UnitSuffix().breaches(shop(text))).isEmpty();
  }

  @Test
  void exceptionsHoldInTheirPlaceOnly() {
    String position = "record Position(int number) {} record Slide(int number) {}";
    assertThat(new UnitSuffix().breaches(shop(position))).hasSize(1);
    String checks = "class Require { public void positive(double value, double least) {} }";
    assertThat(new UnitSuffix().breaches(shop(checks))).isEmpty();
  }

  @Test
  void onlyTheProgramOfTheCountingModulesIsAsked() {
    String text = "record Cut(double feed) {}";
    for (String file : List.of("cli/src/main/java/A.java", "shop/src/test/java/A.java")) {
      assertThat(new UnitSuffix().breaches(JavaSource.parse(file, text))).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "class Force { double f(double a) { return 2 * a; } }",
        "/** Source: */ class Force { double f(double a) { return Math.sqrt(a); } }",
        "/** Force of a cut. */ class Force { double f(double a) { return 1 / a; } }"
      })
  void formulasWithoutSource(String text) {
    assertThat(new FormulaSource().breaches(cutting(text)))
        .containsExactly(
            "cutting/src/main/java/drumline/cutting/Sample.java:1:"
                + " a formula without \"Source: …\" in its file");
    assertThat(new FormulaSource().breaches(shop(text))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/** Source: [TSCH] page 1. */ class Force { double f(double a) { return 2 * a; } }",
        "/**\n * Force. Source:\n * [TSCH] page 1.\n */\nclass Force { double f = 2 * 3.0; }",
        "/** Source: geometry. */ class Force { double f(double a) { return 2 * a; } }",
        "class Force { double f(double a) { return Math.max(a, 1) + 1; } }"
      })
  void formulasWithSourceOrNone(String text) {
    assertThat(new FormulaSource().breaches(cutting(text))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\tx",
        "// TO" + "DO later",
        "FIX" + "ME",
        "see /ho" + "me/someone/notes",
        "\"/tm" + "p/x\"",
        "(/wo" + "rk/a)",
        "C:\\Us" + "ers",
        "https://repo1.mav" + "en.org/x"
      })
  void textThatIsBanned(String text) {
    assertThat(PlainText.breaches("README.md", "first line\n" + text + "\n"))
        .singleElement()
        .asString()
        .startsWith("README.md:2: ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a todo list", "drawing/work/x", "https://example.org/home/x", "$TMP/tmp/x"})
  void textThatLooksAlmostLikeIt(String text) {
    assertThat(PlainText.breaches("README.md", text)).isEmpty();
  }

  @Test
  void longJavaFiles() {
    assertThat(PlainText.breaches("A.java", "\n".repeat(401)))
        .containsExactly("A.java:1: 401 lines, allowed 400");
    assertThat(PlainText.breaches("A.java", "\n".repeat(400))).isEmpty();
    assertThat(PlainText.breaches("LICENSE", "\n".repeat(401))).isEmpty();
  }
}
