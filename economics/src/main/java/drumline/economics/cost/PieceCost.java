package drumline.economics.cost;

import drumline.economics.Amount;
import drumline.economics.output.Output;
import drumline.economics.output.YearPlan;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a good piece costs, by share.
 *
 * <pre>
 * material  bar bought · price − chips and ends · credit
 * machine   hour rate · A / made per hour
 * labour    labour rate / machines per operator / made per hour
 * tools     Σ edges · price of an edge
 * set-up    hours · rate / good pieces of a lot
 * scrap     (material + machine + labour + tools) · (made / good − 1)
 * </pre>
 *
 * <ul>
 *   <li>made per hour: pieces cut off per planned hour, stops and breakdowns included
 *   <li>A availability: the machine's rate is for running hours, so its breakdowns are in the rate
 *       and not charged again; people are paid while it stands
 *   <li>made / good = 1/(1 − s) + u/N: scrap of the run, and u pieces lost at the start of a lot of
 *       N; their chips' value is not credited
 * </ul>
 *
 * Source: [HAUFE] (VDI 3258 logic), [GRO-DOWN]; the split by share is common practice.
 *
 * @param currency ISO 4217 code
 * @param shares one of each kind, in the order of {@link CostShare.Kind}
 */
public record PieceCost(String currency, List<CostShare> shares) {

  /** Copies the list. */
  public PieceCost {
    shares = List.copyOf(shares);
  }

  /**
   * The cost of a piece.
   *
   * @param currency ISO 4217 code of all amounts
   * @param materialPerPiece material of one piece cut off
   * @param toolsPerPiece edges of one piece cut off
   * @param output pieces per hour, with the availability, scrap and lots it was computed for
   * @param rates what hours cost
   */
  public static PieceCost of(
      String currency,
      BigDecimal materialPerPiece,
      BigDecimal toolsPerPiece,
      Output output,
      HourRates rates) {
    YearPlan plan = output.plan();
    double madePerHour = output.madePerHour();
    BigDecimal machine =
        Amount.over(rates.machinePerHour(), madePerHour * 100 / output.availabilityPct());
    BigDecimal labour =
        Amount.over(rates.labourPerHour(), madePerHour * rates.machinesPerOperatorCount());
    BigDecimal made = materialPerPiece.add(machine).add(labour).add(toolsPerPiece);
    double lostPerGood =
        1 / (1 - output.scrapPct() / 100)
            + (double) plan.startUpScrapPerLotCount() / plan.goodPerLotCount()
            - 1;
    Map<CostShare.Kind, BigDecimal> amounts = new EnumMap<>(CostShare.Kind.class);
    amounts.put(CostShare.Kind.MATERIAL, materialPerPiece);
    amounts.put(CostShare.Kind.MACHINE, machine);
    amounts.put(CostShare.Kind.LABOUR, labour);
    amounts.put(CostShare.Kind.TOOLS, toolsPerPiece);
    amounts.put(
        CostShare.Kind.SET_UP,
        Amount.over(
            Amount.times(rates.setUpPerHour(), plan.setUpH()), (double) plan.goodPerLotCount()));
    amounts.put(CostShare.Kind.SCRAP, Amount.times(made, lostPerGood));
    return new PieceCost(
        currency,
        amounts.entrySet().stream()
            .map(entry -> new CostShare(entry.getKey(), Amount.perPiece(entry.getValue())))
            .toList());
  }

  /** All shares together. */
  public BigDecimal total() {
    return shares.stream().map(CostShare::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The share of one kind. */
  public BigDecimal share(CostShare.Kind kind) {
    return shares.stream()
        .filter(share -> share.kind() == kind)
        .map(CostShare::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What a further good piece costs once the machine is set up: all but the set-up. */
  public BigDecimal runningPerPiece() {
    return total().subtract(share(CostShare.Kind.SET_UP));
  }
}
