package drumline.economics.cost;

import drumline.economics.Range;
import java.math.BigDecimal;

/**
 * What hours cost.
 *
 * @param machinePerHour full cost of a running hour of the machine without labour
 * @param labourPerHour one person's hour
 * @param machinesPerOperatorCount machines that one person looks after
 * @param setUpPerHour hour of setting up, person and machine
 */
public record HourRates(
    BigDecimal machinePerHour,
    BigDecimal labourPerHour,
    double machinesPerOperatorCount,
    BigDecimal setUpPerHour) {

  /**
   * Checks the rates.
   *
   * @throws IllegalArgumentException if a rate is below 0 or nobody looks after the machine
   */
  public HourRates {
    Range.notNegative("machinePerHour", machinePerHour);
    Range.notNegative("labourPerHour", labourPerHour);
    Range.positive("machinesPerOperatorCount", machinesPerOperatorCount);
    Range.notNegative("setUpPerHour", setUpPerHour);
  }
}
