package drumline.economics.study;

import drumline.economics.Range;
import drumline.shop.machine.BarFeed.Loading;
import java.math.BigDecimal;

/**
 * One machine's terms, in the study's currency.
 *
 * @param title what a reader sees
 * @param price price without options
 * @param optionsPrice options that the layout needs
 * @param hourRate full cost of a running hour without labour
 * @param setUpH hours of one set-up
 * @param machinesPerOperatorCount machines that one person looks after
 * @param availabilityPct share of planned time that is neither breakdown nor waiting
 * @param loading whether the drum stands for a new bar
 * @param barChangeS time to load one spindle's bar
 */
public record MachineTerms(
    String title,
    BigDecimal price,
    BigDecimal optionsPrice,
    BigDecimal hourRate,
    double setUpH,
    double machinesPerOperatorCount,
    double availabilityPct,
    Loading loading,
    double barChangeS) {

  /**
   * Checks the terms.
   *
   * @throws IllegalArgumentException if a quantity is outside its range
   */
  public MachineTerms {
    Range.notNegative("price", price);
    Range.notNegative("optionsPrice", optionsPrice);
    Range.notNegative("hourRate", hourRate);
    Range.notNegative("setUpH", setUpH);
    Range.positive("machinesPerOperatorCount", machinesPerOperatorCount);
    Range.usablePct("availabilityPct", availabilityPct);
    Range.notNegative("barChangeS", barChangeS);
  }

  /** Price with options. */
  public BigDecimal investment() {
    return price.add(optionsPrice);
  }
}
