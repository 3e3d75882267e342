package drumline.shop.quantity.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.shop.quantity.Money;
import drumline.shop.quantity.MoneyParsed;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.MoneyReader;
import drumline.shop.quantity.Parsed;
import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money keeps every digit that was written, and its currency. */
class MoneyReadingTest {

  @ParameterizedTest
  @CsvSource({
    "1.85 EUR, WHOLE, 1.85 EUR",
    "EUR 1.850, WHOLE, 1.850 EUR",
    "€1.85, WHOLE, 1.85 EUR",
    "95 EUR/h, HOUR, 95 EUR",
    "95 chf per hour, HOUR, 95 CHF",
    "2.10 EUR / kg, KG, 2.10 EUR",
    "0.1 EUR/pc, PIECE, 0.1 EUR",
    "1.10 USD/lb, KG, 2.425084884033653 USD",
    "-3 EUR, WHOLE, -3 EUR",
  })
  void readsMoney(String text, MoneyPer per, String expected) {
    MoneyParsed parsed = MoneyReader.read(text, per);

    assertThat(parsed).isInstanceOf(MoneyParsed.Value.class);
    assertThat(((MoneyParsed.Value) parsed).money().toText()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.85; WHOLE; UNIT_MISSING; Maybe \"1.85 EUR\".",
        "1,85 EUR; WHOLE; NOT_A_NUMBER; Maybe \"1.85 EUR\": a number has no comma.",
        "$5; WHOLE; UNIT_UNKNOWN; Maybe USD: the sign $ stands for many currencies.",
        "5 XQX; WHOLE; UNIT_UNKNOWN; ''",
        "95 EUR; HOUR; UNIT_MISSING; Maybe \"95 EUR/h\".",
        "95 EUR/kg; HOUR; UNIT_OF_ANOTHER_KIND; Maybe \"95 EUR/h\".",
        "95 EUR/h; WHOLE; UNIT_OF_ANOTHER_KIND; Maybe \"95 EUR\".",
        "cheap; WHOLE; NOT_A_NUMBER; ''",
      })
  void saysWhatIsWrong(String text, MoneyPer per, Parsed.Reason reason, String hint) {
    MoneyParsed parsed = MoneyReader.read(text, per);

    assertThat(parsed).isInstanceOf(Parsed.Refused.class);
    assertThat(((Parsed.Refused) parsed).reason()).isEqualTo(reason);
    assertThat(((Parsed.Refused) parsed).hint()).isEqualTo(hint);
  }

  @Test
  void addsOnlyOneCurrency() {
    Money euro = new Money(new BigDecimal("1.85"), Currency.getInstance("EUR"));
    Money franc = new Money(BigDecimal.ONE, Currency.getInstance("CHF"));

    assertThat(euro.plus(euro).times(new BigDecimal("3")).toText()).isEqualTo("11.10 EUR");
    assertThatThrownBy(() -> euro.plus(franc))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("currency is CHF; allowed: EUR");
  }
}
