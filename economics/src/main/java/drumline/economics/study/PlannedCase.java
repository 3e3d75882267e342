package drumline.economics.study;

import drumline.cycle.timeline.Timeline;
import drumline.economics.bar.BarStock;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.cost.OptionNeed;
import drumline.economics.output.YearPlan;
import drumline.economics.tool.ToolWear;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Rates;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.material.Material;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.List;

/** Gathers the money case of a planned layout from the inquiry and the machine. */
public final class PlannedCase {
  private PlannedCase() {}

  /**
   * The case of a layout on the clock.
   *
   * @param inquiry volumes, shifts, rates, material, bar
   * @param machine the machine it is laid out on
   * @param route operations, divided ones included
   * @param layout their places and speeds
   * @param timeline the layout on the clock
   * @param partVolumeMm3 volume of the finished piece
   * @param assumptions what nobody said
   * @throws IllegalArgumentException if the layout names an operation or slide that is not there, a
   *     currency has no exchange rate, or a quantity is outside its range
   */
  public static MoneyCase of(
      Inquiry inquiry,
      Machine machine,
      Route route,
      Layout layout,
      Timeline timeline,
      double partVolumeMm3,
      Assumptions assumptions) {
    Rates rates = inquiry.rates();
    MachineCost cost = machine.cost();
    return new MoneyCase(
        rates.currency(),
        timeline.cycleS(),
        timeline.piecesPerIndexCount(),
        stock(inquiry, machine, route, partVolumeMm3, assumptions),
        material(inquiry.material(), rates),
        layout.placements().stream().map(p -> wear(route, p, rates, assumptions)).toList(),
        terms(machine, route, layout, rates),
        new HourRates(
            rates.convert(cost.hourRate(), cost.currency()),
            rates.labourPerHour(),
            cost.machinesPerOperatorCount(),
            rates.setUpPerHour()),
        new YearPlan(
            inquiry.volumes().perYearCount(),
            inquiry.volumes().perLotCount(),
            inquiry.shifts().hoursPerYearH(),
            cost.setUpH(),
            assumptions.startUpScrapPerLotCount()),
        rates.scrapPct(),
        assumptions.stopRestartMin());
  }

  private static BarStock stock(
      Inquiry inquiry,
      Machine machine,
      Route route,
      double partVolumeMm3,
      Assumptions assumptions) {
    double pieceMm = inquiry.part().lengthMm();
    BarAllowance allowance = BarAllowance.of(route, pieceMm);
    return new BarStock(
        inquiry.bar().lengthMm(),
        machine.barFeed().barLengthMm(),
        machine.barFeed().remnantMm(),
        assumptions.firstFacingMm(),
        pieceMm,
        allowance.facingMm(),
        allowance.kerfMm(),
        inquiry.bar().areaMm2(),
        inquiry.material().densityKgPerDm3(),
        partVolumeMm3);
  }

  private static MaterialPrice material(Material material, Rates rates) {
    return new MaterialPrice(
        rates.convert(material.pricePerKg(), material.currency()),
        rates.convert(material.chipCreditPerKg(), material.currency()));
  }

  private static ToolWear wear(
      Route route, Placement placement, Rates rates, Assumptions assumptions) {
    Operation operation = route.operation(placement.operationId());
    return ToolWear.of(
        operation,
        placement.spindleRevPerMin(),
        assumptions.longestLifeMin(),
        rates.convert(operation.tool().price(), operation.tool().family().currency()));
  }

  private static MachineTerms terms(Machine machine, Route route, Layout layout, Rates rates) {
    MachineCost cost = machine.cost();
    List<OptionNeed> options = OptionNeed.of(machine, route, layout);
    return new MachineTerms(
        machine.title(),
        rates.convert(cost.price(), cost.currency()),
        rates.convert(OptionNeed.total(options), cost.currency()),
        rates.convert(cost.hourRate(), cost.currency()),
        cost.setUpH(),
        cost.machinesPerOperatorCount(),
        cost.availabilityPct(),
        machine.barFeed().loading(),
        machine.barFeed().barChangeS());
  }
}
