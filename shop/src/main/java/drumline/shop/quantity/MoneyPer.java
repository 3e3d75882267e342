package drumline.shop.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What an amount of money pays for. */
public enum MoneyPer {
  /** An amount by itself, such as the price of a machine. */
  WHOLE("", "=1"),
  /** For one piece. */
  PIECE("/piece", "piece=1 pc=1"),
  /** For one hour, such as a machine's hour rate. */
  HOUR("/h", "h=1 hr=1 hour=1"),
  /** For one kilogram, such as the price of bar; one pound is 0.45359237 kg. */
  KG("/kg", "kg=1 lb=0.45359237"),
  /** For one metre; one foot is 0.3048 m. */
  METRE("/m", "m=1 ft=0.3048"),
  /** For one kilowatt hour. */
  KWH("/kWh", "kwh=1"),
  /** For one square metre of floor; one square foot is 0.09290304 m². */
  SQUARE_METRE("/m²", "m²=1 m2=1 ft²=0.09290304 ft2=0.09290304"),
  /** For one year. */
  YEAR("/year", "year=1 a=1");

  private final String symbol;
  private final String sizes;

  MoneyPer(String symbol, String sizes) {
    this.symbol = symbol;
    this.sizes = sizes;
  }

  /** How it is written after the currency, e.g. {@code "/h"}; empty for a whole amount. */
  public String symbol() {
    return symbol;
  }

  /** How many of this measure one of the written word is; empty if the word is unknown here. */
  Optional<BigDecimal> findSize(String word) {
    String start = word + "=";
    return Arrays.stream(sizes.split(" ", -1))
        .filter(size -> size.startsWith(start))
        .map(size -> new BigDecimal(size.substring(start.length())))
        .findFirst();
  }

  /** Every word that may stand after the stroke. */
  List<String> words() {
    return Arrays.stream(sizes.split(" ", -1))
        .map(size -> size.substring(0, size.indexOf('=')))
        .toList();
  }
}
