package drumline.economics.cost;

import drumline.economics.Range;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * When a machine has earned its price.
 *
 * <p>Simple payback: months = 12·I / S. Cash payback: months = 12·I / (S + W): piece costs that
 * contain the machine's hour rate have already paid for its write-off, which is no cash; adding it
 * back avoids counting the investment twice.
 *
 * <ul>
 *   <li>I price with options, all machines; S saving in a year at full cost; W write-off in a year
 *       contained in the new piece cost; same currency
 * </ul>
 *
 * Not discounted; see {@link drumline.economics.invest.NetPresentValue}. Source: common practice
 * (static payback).
 *
 * @param investment price with options, all machines
 * @param savingPerYear saving in a year
 * @param writeOffPerYear write-off contained in the new piece cost
 * @param simpleMonthsCount simple payback in months; empty when there is no saving
 * @param cashMonthsCount cash payback in months; empty when there is no saving
 */
public record Payback(
    BigDecimal investment,
    BigDecimal savingPerYear,
    BigDecimal writeOffPerYear,
    OptionalDouble simpleMonthsCount,
    OptionalDouble cashMonthsCount) {

  /**
   * The payback of an investment.
   *
   * @throws IllegalArgumentException if investment or write-off are below 0
   */
  public static Payback of(BigDecimal investment, Saving saving, BigDecimal writeOffPerYear) {
    double price = Range.notNegative("investment", investment).doubleValue();
    double writeOff = Range.notNegative("writeOffPerYear", writeOffPerYear).doubleValue();
    double perYear = saving.perYear().doubleValue();
    return new Payback(
        investment,
        saving.perYear(),
        writeOffPerYear,
        saving.isThere() ? OptionalDouble.of(12 * price / perYear) : OptionalDouble.empty(),
        saving.isThere()
            ? OptionalDouble.of(12 * price / (perYear + writeOff))
            : OptionalDouble.empty());
  }

  /** As a sentence for a reader. */
  public String words() {
    if (simpleMonthsCount.isEmpty()) {
      return "No payback: a piece would not cost less than today.";
    }
    return String.format(
        Locale.ROOT,
        "Paid back in %.0f months with the write-off added back, %.0f by the saving alone.",
        Math.ceil(cashMonthsCount.orElseThrow()),
        Math.ceil(simpleMonthsCount.orElseThrow()));
  }
}
