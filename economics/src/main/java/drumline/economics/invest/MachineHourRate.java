package drumline.economics.invest;

import drumline.economics.Amount;
import java.math.BigDecimal;

/**
 * Full cost of a running hour of a machine, without labour.
 *
 * <pre>
 * write-off    replacement value / (years · running hours)
 * interest     ½ · purchase price · i / running hours
 * maintenance, space   per year / running hours
 * energy       mean power · price
 * </pre>
 *
 * Running hours are what is left of the year after stops for lack of work and for maintenance.
 *
 * <p>Source: [HAUFE] (logic of VDI 3258); worked examples [ABWL], [STUDY].
 *
 * @param writeOff write-off per hour
 * @param interest interest per hour
 * @param maintenance maintenance per hour
 * @param energy energy per hour
 * @param space floor space per hour
 * @param tools tools per hour, where they are not charged to the piece
 */
public record MachineHourRate(
    BigDecimal writeOff,
    BigDecimal interest,
    BigDecimal maintenance,
    BigDecimal energy,
    BigDecimal space,
    BigDecimal tools) {

  /** The rate of a machine. */
  public static MachineHourRate of(HourRateCase given) {
    double hours = given.runningHPerYear();
    return new MachineHourRate(
        Amount.over(given.replacementValue(), given.lifeYearsCount() * hours),
        Amount.over(Amount.times(given.purchasePrice(), given.interestPct() / 200), hours),
        Amount.over(given.maintenancePerYear(), hours),
        Amount.times(given.energyPerKwh(), given.powerKw()),
        Amount.over(given.spacePerYear(), hours),
        given.toolsPerHour());
  }

  /** The whole rate. */
  public BigDecimal total() {
    return writeOff.add(interest).add(maintenance).add(energy).add(space).add(tools);
  }
}
