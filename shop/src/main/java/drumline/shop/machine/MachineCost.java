package drumline.shop.machine;

import java.math.BigDecimal;
import java.util.Map;

/**
 * What a machine costs.
 *
 * @param currency ISO 4217 code
 * @param price price as quoted without options
 * @param optionPrices price of each piece of equipment, for one slide
 * @param mostOptionsCount most slides of the machine that can be fitted with a piece of equipment;
 *     no limit where absent
 * @param hourRate full cost of a running hour without labour
 * @param setUpH hours to set up for a new piece
 * @param machinesPerOperatorCount machines that one person looks after
 * @param availabilityPct share of the planned time that is neither breakdown nor waiting
 */
public record MachineCost(
    String currency,
    BigDecimal price,
    Map<Equipment, BigDecimal> optionPrices,
    Map<Equipment, Integer> mostOptionsCount,
    BigDecimal hourRate,
    double setUpH,
    double machinesPerOperatorCount,
    double availabilityPct) {

  /** Copies the maps. */
  public MachineCost {
    optionPrices = Map.copyOf(optionPrices);
    mostOptionsCount = Map.copyOf(mostOptionsCount);
  }

  /** The cost of a machine that takes its options on every slide. */
  public MachineCost(
      String currency,
      BigDecimal price,
      Map<Equipment, BigDecimal> optionPrices,
      BigDecimal hourRate,
      double setUpH,
      double machinesPerOperatorCount,
      double availabilityPct) {
    this(
        currency,
        price,
        optionPrices,
        Map.of(),
        hourRate,
        setUpH,
        machinesPerOperatorCount,
        availabilityPct);
  }
}
