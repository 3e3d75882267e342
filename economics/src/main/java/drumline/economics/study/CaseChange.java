package drumline.economics.study;

import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.output.YearPlan;
import drumline.economics.tool.ToolWear;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Copies of a case with one figure changed.
 *
 * @param given the case
 */
record CaseChange(MoneyCase given) {

  MoneyCase cycleS(double newCycleS) {
    return copy(newCycleS, given.material(), given.tools(), given.machine(), given.rates());
  }

  MoneyCase material(MaterialPrice prices) {
    return copy(given.cycleS(), prices, given.tools(), given.machine(), given.rates());
  }

  MoneyCase tools(UnaryOperator<ToolWear> change) {
    List<ToolWear> tools = given.tools().stream().map(change).toList();
    return copy(given.cycleS(), given.material(), tools, given.machine(), given.rates());
  }

  MoneyCase rates(UnaryOperator<HourRates> change) {
    return copy(
        given.cycleS(),
        given.material(),
        given.tools(),
        given.machine(),
        change.apply(given.rates()));
  }

  MoneyCase availabilityPct(double newAvailabilityPct) {
    MachineTerms old = given.machine();
    MachineTerms machine =
        new MachineTerms(
            old.title(),
            old.price(),
            old.optionsPrice(),
            old.hourRate(),
            old.setUpH(),
            old.machinesPerOperatorCount(),
            newAvailabilityPct,
            old.loading(),
            old.barChangeS());
    return copy(given.cycleS(), given.material(), given.tools(), machine, given.rates());
  }

  MoneyCase scrapPct(double newScrapPct) {
    return rest(given.plan(), newScrapPct, given.stopRestartMin());
  }

  MoneyCase plan(YearPlan plan) {
    return rest(plan, given.scrapPct(), given.stopRestartMin());
  }

  MoneyCase stopRestartMin(double newStopRestartMin) {
    return rest(given.plan(), given.scrapPct(), newStopRestartMin);
  }

  private MoneyCase copy(
      double cycleS,
      MaterialPrice material,
      List<ToolWear> tools,
      MachineTerms machine,
      HourRates rates) {
    return new MoneyCase(
        given.currency(),
        cycleS,
        given.piecesPerIndexCount(),
        given.stock(),
        material,
        tools,
        machine,
        rates,
        given.plan(),
        given.scrapPct(),
        given.stopRestartMin());
  }

  private MoneyCase rest(YearPlan plan, double scrapPct, double stopRestartMin) {
    return new MoneyCase(
        given.currency(),
        given.cycleS(),
        given.piecesPerIndexCount(),
        given.stock(),
        given.material(),
        given.tools(),
        given.machine(),
        given.rates(),
        plan,
        scrapPct,
        stopRestartMin);
  }
}
