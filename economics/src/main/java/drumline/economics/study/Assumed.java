package drumline.economics.study;

import drumline.economics.Amount;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.output.YearPlan;
import java.util.function.UnaryOperator;

/** A figure that a study rests on, and how to change it by a factor. */
public enum Assumed {
  /** Time from one index to the next. */
  CYCLE("cycle time"),
  /** Price of bar; what chips bring stays. */
  BAR_PRICE("price of bar"),
  /** Life of every edge. */
  TOOL_LIFE("tool life"),
  /** Price of every edge. */
  TOOL_PRICE("price of tools"),
  /** Minutes of every change and of stopping and starting again. */
  CHANGE_TIME("tool change minutes"),
  /** Machine's hour rate. */
  HOUR_RATE("machine hour rate"),
  /** Person's hour. */
  LABOUR_RATE("labour rate"),
  /** Time lost to breakdowns and waiting. */
  DOWNTIME("breakdowns and waiting"),
  /** Share of scrap. */
  SCRAP("scrap"),
  /** Hours of a set-up. */
  SET_UP("set-up hours"),
  /** Pieces in a lot. */
  LOT("pieces per lot");

  private final String words;

  Assumed(String words) {
    this.words = words;
  }

  /** As a reader sees it. */
  public String words() {
    return words;
  }

  /** The case with this figure times a factor, everything else as it was. */
  public MoneyCase scaled(MoneyCase given, double factorRatio) {
    CaseChange change = new CaseChange(given);
    return switch (this) {
      case CYCLE -> change.cycleS(given.cycleS() * factorRatio);
      case BAR_PRICE ->
          change.material(
              new MaterialPrice(
                  Amount.times(given.material().barPerKg(), factorRatio),
                  given.material().scrapPerKg()));
      case TOOL_LIFE -> change.tools(tool -> tool.withLifeMin(tool.lifeMin() * factorRatio));
      case TOOL_PRICE ->
          change.tools(
              tool -> tool.withPricePerEdge(Amount.times(tool.pricePerEdge(), factorRatio)));
      case CHANGE_TIME ->
          new CaseChange(change.tools(t -> t.withChangeMin(t.changeMin() * factorRatio)))
              .stopRestartMin(given.stopRestartMin() * factorRatio);
      case HOUR_RATE -> change.rates(machineRate(factorRatio));
      case LABOUR_RATE -> change.rates(labourRate(factorRatio));
      case DOWNTIME ->
          change.availabilityPct(100 - (100 - given.machine().availabilityPct()) * factorRatio);
      case SCRAP -> change.scrapPct(given.scrapPct() * factorRatio);
      case SET_UP -> change.plan(setUp(given.plan(), factorRatio));
      case LOT -> change.plan(lot(given.plan(), factorRatio));
    };
  }

  private static UnaryOperator<HourRates> machineRate(double factorRatio) {
    return rates ->
        new HourRates(
            Amount.times(rates.machinePerHour(), factorRatio),
            rates.labourPerHour(),
            rates.machinesPerOperatorCount(),
            rates.setUpPerHour());
  }

  private static UnaryOperator<HourRates> labourRate(double factorRatio) {
    return rates ->
        new HourRates(
            rates.machinePerHour(),
            Amount.times(rates.labourPerHour(), factorRatio),
            rates.machinesPerOperatorCount(),
            rates.setUpPerHour());
  }

  private static YearPlan setUp(YearPlan plan, double factorRatio) {
    return new YearPlan(
        plan.goodPerYearCount(),
        plan.goodPerLotCount(),
        plan.plannedH(),
        plan.setUpH() * factorRatio,
        plan.startUpScrapPerLotCount());
  }

  private static YearPlan lot(YearPlan plan, double factorRatio) {
    return new YearPlan(
        plan.goodPerYearCount(),
        Math.max(1, Math.round(plan.goodPerLotCount() * factorRatio)),
        plan.plannedH(),
        plan.setUpH(),
        plan.startUpScrapPerLotCount());
  }
}
