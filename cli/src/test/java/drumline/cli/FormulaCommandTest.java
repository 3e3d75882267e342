package drumline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FormulaCommandTest {

  @Test
  void listsAllFormulasByTopic() {
    Terminal run = Terminal.run("formula");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("turning\n", "  cut-off-time ", "  slip-safety ", "  bar-yield ");
    assertThat(run.out().lines().mapToInt(String::length).max().orElse(0)).isLessThan(116);
  }

  @Test
  void showsInputsRangesExampleAndSource() {
    Terminal run = Terminal.run("formula", "cut-off-time");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "startDiameter", "above 0 mm", "default 0.5 mm", "usually 0.02 mm/rev to 0.2 mm/rev")
        .contains("Example: drumline formula cut-off-time startDiameter=32mm", "Source: ");
  }

  /** 16 mm at 0.08 mm/rev and 1500 rev/min by hand: 200 revolutions, 8 s. */
  @Test
  void computesWithStepsDefaultsAndSource() {
    Terminal run =
        Terminal.run(
            "formula",
            "cut-off-time",
            "startDiameter=32mm",
            "endDiameter=0",
            "feed=0.08mm/rev",
            "approach=0",
            "spindleSpeed=1500rev/min");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("time t  8 s", "revolutions", "200", "default", "Source: ");
  }

  @Test
  void readsAndShowsInches() {
    Terminal run =
        Terminal.run("formula", "spindle-speed", "speed=300", "diameter=1", "--units", "inch");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("300 ft/min", "1 in", "1145.9 rev/min");
  }

  @Test
  void warnsOutsideTheUsualRange() {
    Terminal run =
        Terminal.run("formula", "kienzle-force", "depth=1mm", "feed=0.01mm/rev", "material=C45");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("Warning: chip thickness");
  }

  @Test
  void answersAsJson() {
    Terminal run =
        Terminal.run("formula", "spindle-speed", "speed=200m/min", "diameter=105mm", "--json");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("\"speedMPerMin\" : 200", "\"valueRevPerMin\" : 606.3");
  }

  @Test
  void saysAllThatIsWrongAtOnce() {
    Terminal run =
        Terminal.run(
            "formula", "turning-time", "lenght=30mm", "feed=NaN", "diameter=5kg", "speed=100m/min");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().lines()).hasSize(4);
    assertThat(run.err())
        .contains("formula turning-time, lenght", "Maybe length")
        .contains("formula turning-time, feed", "formula turning-time, diameter", "no value");
  }

  @Test
  void guessesAtAMisspeltName() {
    Terminal run = Terminal.run("formula", "cutoff-time");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("\"cutoff-time\"", "Maybe ", "cut-off-time");
  }

  @Test
  void refusesUnknownUnitsAndBothSpeeds() {
    assertThat(Terminal.run("formula", "thread-depth", "pitch=1", "--units", "cubits").err())
        .contains("--units", "metric or inch");
    Terminal both =
        Terminal.run(
            "formula", "knurl-time", "diameter=20mm", "speed=20m/min", "spindleSpeed=300rev/min");
    assertThat(both.code()).isEqualTo(2);
    assertThat(both.err()).contains("formula knurl-time, speed", "given twice", "one of");
  }
}
