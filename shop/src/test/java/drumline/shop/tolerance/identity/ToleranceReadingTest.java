package drumline.shop.tolerance.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tolerances in the ways prints give them. */
class ToleranceReadingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "H7; 12; METRIC; 0; 0.018",
        "h 9; 12; METRIC; -0.043; 0",
        "js10; 12; METRIC; -0.035; 0.035",
        "±0.05; 12; METRIC; -0.05; 0.05",
        "± .05 mm; 12; METRIC; -0.05; 0.05",
        "+/-0.002 in; 12; METRIC; -0.0508; 0.0508",
        "+-.002; 12.7; INCH; -0.0508; 0.0508",
        "+0.02/-0.01; 12; METRIC; -0.01; 0.02",
        "-0.01/+0.02; 12; METRIC; -0.01; 0.02",
        "+0.02 -0.01; 12; METRIC; -0.01; 0.02",
        "+0.02-0.01; 12; METRIC; -0.01; 0.02",
        "+0.02 / −0.01 mm; 12; METRIC; -0.01; 0.02",
        "+.001/-.0005\"; 12; METRIC; -0.0127; 0.0254",
        "+0.1 0; 12; METRIC; 0; 0.1",
        "0 -0.1; 12; METRIC; -0.1; 0",
        "0/-0.1; 12; METRIC; -0.1; 0",
        "-0.01 -0.03; 12; METRIC; -0.03; -0.01",
        "+20 µm / -10 µm; 12; METRIC; -0.01; 0.02",
        "12.00–12.05; 12; METRIC; 0; 0.05",
        "12.00-12.05; 12; METRIC; 0; 0.05",
        "12..12.05 mm; 12; METRIC; 0; 0.05",
        "12.00..12.05 mm; 12; METRIC; 0; 0.05",
        "11.98 to 12.05; 12; METRIC; -0.02; 0.05",
        ".5005/.4995; 12.7; INCH; -0.0127; 0.0127",
        "ISO 2768-m; 12; METRIC; -0.2; 0.2",
        "ISO 2768 - fH; 12; METRIC; -0.1; 0.1",
      })
  void readsWhatPrintsGive(
      String text, double nominalMm, UnitSystem system, double lowerMm, double upperMm) {
    ToleranceParsed parsed = ToleranceReader.read(text, nominalMm, system);

    assertThat(parsed).isInstanceOf(ToleranceParsed.Value.class);
    Tolerance tolerance = ((ToleranceParsed.Value) parsed).tolerance();
    assertThat(tolerance.lowerDeviationMm()).isCloseTo(lowerMm, within(1e-9));
    assertThat(tolerance.upperDeviationMm()).isCloseTo(upperMm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0.05; tolerance-unreadable; Maybe \"±0.05\".",
        "+0.05; tolerance-unreadable; Maybe \"+0.05 0\" or \"±0.05\".",
        "-0.05; tolerance-unreadable; Maybe \"0 -0.05\".",
        "+0,02/-0,01; tolerance-unreadable; Maybe \"+0.02/-0.01\": a number has no comma.",
        "±0.05 kg; unit-of-another-kind; Maybe another field was meant: kg measures mass.",
        "±0.05 mn; unit-unknown; Maybe the unit mm.",
        "+0.02 +0.02; tolerance-without-width; ''",
        "±0; tolerance-without-width; ''",
        "21.00-21.05; tolerance-limits-far-off; Maybe the limits or the nominal size are mistyped.",
        "Js9; tolerance-letters-unknown; Maybe JS9 for a hole or js9 for a shaft.",
        "Q7; tolerance-letters-unknown; ''",
        "H19; tolerance-grade-unknown; ''",
        "t7; tolerance-not-defined; 'Maybe two deviations, such as +0.02/-0.01.'",
        "H7/g6; tolerance-is-a-fit; Maybe H7 for the hole or g6 for the shaft.",
        "ISO 2768-M; tolerance-not-defined; Maybe ISO 2768-m.",
        "tight; tolerance-unreadable; ''",
      })
  void saysWhatIsWrong(String text, String code, String hint) {
    ToleranceParsed parsed = ToleranceReader.read(text, 12, UnitSystem.METRIC);

    assertThat(parsed).isInstanceOf(ToleranceParsed.Refused.class);
    ToleranceParsed.Refused refused = (ToleranceParsed.Refused) parsed;
    assertThat(refused.code()).isEqualTo(code);
    assertThat(refused.hint()).isEqualTo(hint);
    assertThat(refused.allowed()).isNotBlank();
  }

  @Test
  void aRefusalBecomesAProblem() {
    ToleranceParsed parsed = ToleranceReader.read("t7", 12, UnitSystem.METRIC);

    assertThat(((ToleranceParsed.Refused) parsed).toProblem("part.yaml line 9").toLine())
        .isEqualTo(
            "error: part.yaml line 9: \"t7 at 12.0 mm\"; allowed: a class that ISO 286-1 defines at"
                + " this size, to 500 mm. Maybe two deviations, such as +0.02/-0.01.");
  }

  @Test
  void deviationsAndLimitsWrittenFromNumbersReadBack() {
    long seed = 1101;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      double nominalMm = 1 + random.nextInt(119_000) / 1000.0;
      double lowerMm = random.nextInt(-90, 90) / 1000.0;
      double upperMm = lowerMm + random.nextInt(1, 90) / 1000.0;
      String deviations = String.format(Locale.ROOT, "%+.3f/%+.3f", upperMm, lowerMm);
      String limits =
          String.format(Locale.ROOT, "%.3f..%.3f", nominalMm + lowerMm, nominalMm + upperMm);
      for (String text : new String[] {deviations, limits}) {
        ToleranceParsed parsed = ToleranceReader.read(text, nominalMm, UnitSystem.METRIC);
        String what = "seed " + seed + ": " + text + " at " + nominalMm + " gives " + parsed;
        assertThat(parsed).as(what).isInstanceOf(ToleranceParsed.Value.class);
        Tolerance tolerance = ((ToleranceParsed.Value) parsed).tolerance();
        assertThat(tolerance.lowerDeviationMm()).as(what).isCloseTo(lowerMm, within(1e-7));
        assertThat(tolerance.upperDeviationMm()).as(what).isCloseTo(upperMm, within(1e-7));
      }
    }
  }

  @Test
  void refusesANominalSizeThatIsNone() {
    assertThatThrownBy(() -> ToleranceReader.read("H7", Double.NaN, UnitSystem.METRIC))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("nominalMm is NaN; allowed: above 0");
  }
}
