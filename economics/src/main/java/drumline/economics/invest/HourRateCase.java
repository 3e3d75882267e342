package drumline.economics.invest;

import drumline.economics.Range;
import java.math.BigDecimal;

/**
 * What a machine's hour rate is made of.
 *
 * @param replacementValue price of a like machine when this one is worn out, scrapping included
 * @param purchasePrice price paid, the basis of interest
 * @param lifeYearsCount years of use
 * @param runningHPerYear hours that it runs in a year
 * @param interestPct interest on half the price
 * @param maintenancePerYear maintenance in a year
 * @param powerKw mean power drawn
 * @param energyPerKwh price of energy
 * @param spacePerYear floor space in a year
 * @param toolsPerHour tools, where they are not charged to the piece
 */
public record HourRateCase(
    BigDecimal replacementValue,
    BigDecimal purchasePrice,
    double lifeYearsCount,
    double runningHPerYear,
    double interestPct,
    BigDecimal maintenancePerYear,
    double powerKw,
    BigDecimal energyPerKwh,
    BigDecimal spacePerYear,
    BigDecimal toolsPerHour) {

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if life or hours are not above 0, or anything is below 0
   */
  public HourRateCase {
    Range.notNegative("replacementValue", replacementValue);
    Range.notNegative("purchasePrice", purchasePrice);
    Range.positive("lifeYearsCount", lifeYearsCount);
    Range.positive("runningHPerYear", runningHPerYear);
    Range.notNegative("interestPct", interestPct);
    Range.notNegative("maintenancePerYear", maintenancePerYear);
    Range.notNegative("powerKw", powerKw);
    Range.notNegative("energyPerKwh", energyPerKwh);
    Range.notNegative("spacePerYear", spacePerYear);
    Range.notNegative("toolsPerHour", toolsPerHour);
  }
}
