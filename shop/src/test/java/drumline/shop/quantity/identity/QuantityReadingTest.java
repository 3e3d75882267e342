package drumline.shop.quantity.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people write on prints and order sheets is understood, and what is wrong is said. */
class QuantityReadingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "26 mm; LENGTH; METRIC; 26",
        "26; LENGTH; METRIC; 26",
        "1.024 in; LENGTH; METRIC; 26.0096",
        "1 1/4 in; LENGTH; METRIC; 31.75",
        "1-1/4; LENGTH; INCH; 31.75",
        "-1 1/4 in; LENGTH; INCH; -31.75",
        ".5\"; LENGTH; METRIC; 12.7",
        "1/8; LENGTH; INCH; 3.175",
        "Ø 12.5; LENGTH; METRIC; 12.5",
        "10 000 mm; LENGTH; METRIC; 10000",
        "1.5e3 mm; LENGTH; METRIC; 1500",
        "180 m/min; SPEED_SURFACE; METRIC; 180",
        "600 sfm; SPEED_SURFACE; METRIC; 182.88",
        "600 ft/min; SPEED_SURFACE; METRIC; 182.88",
        "600; SPEED_SURFACE; INCH; 182.88",
        "18 kW; POWER; METRIC; 18",
        "10 hp; POWER; METRIC; 7.4569987158",
        "0.15 mm/rev; FEED_PER_REV; METRIC; 0.15",
        ".006 ipr; FEED_PER_REV; METRIC; 0.1524",
        "0.05 mm/tooth; FEED_PER_TOOTH; METRIC; 0.05",
        "Ra 1.6 µm; ROUGHNESS; METRIC; 1.6",
        "Ra1.6; ROUGHNESS; METRIC; 1.6",
        "63 µin; ROUGHNESS; METRIC; 1.6002",
        "63; ROUGHNESS; INCH; 1.6002",
        "45 deg; ANGLE; METRIC; 45",
        "45°; ANGLE; INCH; 45",
        "4000 rpm; ROTATION; METRIC; 4000",
        "4000 1/min; ROTATION; METRIC; 4000",
        "4000 min⁻¹; ROTATION; METRIC; 4000",
        "35 N m; TORQUE; METRIC; 35",
        "35 N·m; TORQUE; METRIC; 35",
        "10 lbf ft; TORQUE; METRIC; 13.558179483",
        "10 ft-lb; TORQUE; METRIC; 13.558179483",
        "120 N/mm²; STRESS; METRIC; 120",
        "120 MPa; STRESS; METRIC; 120",
        "90 ksi; STRESS; METRIC; 620.5281564",
        "0.8 s; TIME; METRIC; 0.8",
        "12 min; TIME; METRIC; 720",
        "0; TIME; METRIC; 0",
        "7.85 g/cm³; DENSITY; METRIC; 7.85",
        "7850 kg/m3; DENSITY; METRIC; 7.85",
        "0.284 lb/in³; DENSITY; METRIC; 7.8610929",
        "3 %; RATIO; METRIC; 0.03",
        "0.03; RATIO; METRIC; 0.03",
        "14 kg; MASS; METRIC; 14",
        "5 mm/s²; ACCELERATION; METRIC; 0.005",
        "30 m/min; RAPID; METRIC; 30",
        "1181 ipm; RAPID; METRIC; 29.9974",
      })
  void readsWhatPeopleWrite(String text, QuantityKind kind, UnitSystem system, double expected) {
    Parsed parsed = QuantityReader.read(text, kind, system);

    assertThat(parsed).isInstanceOf(Parsed.Value.class);
    assertThat(((Parsed.Value) parsed).value())
        .isCloseTo(expected, within(1e-7 * (1 + Math.abs(expected))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1,5 mm; LENGTH; NOT_A_NUMBER; Maybe \"1.5 mm\": a number has no comma.",
        "1.000,5 mm; LENGTH; NOT_A_NUMBER; Maybe \"1000.5 mm\": a number has no comma.",
        "1,000 mm; LENGTH; NOT_A_NUMBER; Maybe \"1.000 mm\" or \"1000 mm\": a number has no comma.",
        "about 5 mm; LENGTH; NOT_A_NUMBER; ''",
        "1.5.3 mm; LENGTH; NOT_A_NUMBER; ''",
        "NaN; LENGTH; NOT_FINITE; ''",
        "-inf mm; LENGTH; NOT_FINITE; ''",
        "1/0 in; LENGTH; NOT_FINITE; ''",
        "1e999 mm; LENGTH; NOT_FINITE; ''",
        "12; TIME; UNIT_MISSING; Maybe \"12 s\".",
        "180 m/mim; SPEED_SURFACE; UNIT_UNKNOWN; Maybe the unit m/min.",
        "5 mPa; STRESS; UNIT_UNKNOWN; Maybe the unit MPa.",
        "5 kg; FORCE; UNIT_OF_ANOTHER_KIND; Maybe another field was meant: kg measures mass.",
        "0.2 mm; FEED_PER_REV; UNIT_OF_ANOTHER_KIND; Maybe another field was meant: mm measures length.",
      })
  void saysWhatIsWrong(String text, QuantityKind kind, Parsed.Reason reason, String hint) {
    Parsed parsed = QuantityReader.read(text, kind, UnitSystem.METRIC);

    assertThat(parsed).isInstanceOf(Parsed.Refused.class);
    Parsed.Refused refused = (Parsed.Refused) parsed;
    assertThat(refused.reason()).isEqualTo(reason);
    assertThat(refused.hint()).isEqualTo(hint);
    assertThat(refused.found()).isEqualTo("\"" + text + "\"");
  }

  @Test
  void aRefusalBecomesAProblemWithPlaceAllowedUnitsAndHint() {
    Parsed parsed = QuantityReader.read("26 mn", QuantityKind.LENGTH, UnitSystem.METRIC);

    String line = ((Parsed.Refused) parsed).toProblem("washer.yaml line 4, bar.size").toLine();

    assertThat(line)
        .isEqualTo(
            "error: washer.yaml line 4, bar.size: \"26 mn\"; allowed: length in mm, µm, cm, m, in, "
                + "ft, mil. Maybe the unit mm.");
  }

  @Test
  void anEmptyTextIsNamedAsNothing() {
    Parsed parsed = QuantityReader.read("  ", QuantityKind.POWER, UnitSystem.METRIC);

    assertThat(((Parsed.Refused) parsed).found()).isEqualTo("nothing");
    assertThat(((Parsed.Refused) parsed).allowed())
        .isEqualTo("a number with a decimal point and its unit, such as 1.5 kW");
  }
}
