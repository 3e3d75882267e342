package drumline.app.study;

import drumline.cycle.sequential.SequentialCycle;
import drumline.cycle.sequential.SequentialPlan;
import drumline.cycle.spindle.GripDiameters;
import drumline.economics.bar.BarStock;
import drumline.economics.cost.HourRates;
import drumline.economics.output.YearPlan;
import drumline.economics.study.MachineTerms;
import drumline.economics.study.MoneyCase;
import drumline.economics.study.MoneyStudy;
import drumline.route.RouteDerivation;
import drumline.route.machine.MachineRoute;
import drumline.route.rule.Practice;
import drumline.route.rule.PracticeReading;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Rates;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.operation.Route;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The same operations one after another on a machine without a drum, for comparison. Known limit:
 * tools wear as on the drum.
 *
 * @param machine the machine
 * @param cycle its steps
 * @param money output and cost
 */
public record SequentialStudy(Machine machine, SequentialCycle cycle, MoneyStudy money) {

  /** Time from piece to piece, in seconds. */
  public double cycleS() {
    return cycle.cycleS();
  }

  /** The inquiry on each of the library's machines without a drum that can take it. */
  public static List<SequentialStudy> all(MachineStudy study, PlannedLayout plan) {
    List<SequentialStudy> all = new ArrayList<>();
    Practice practice = PracticeReading.of(study.inquiry().overrides()).practice();
    Route derived = RouteDerivation.derive(study.inquiry(), practice);
    for (Machine machine : study.inquiry().machines()) {
      boolean alike =
          machine.kind() == Machine.Kind.TWIN_SPINDLE
              || machine.kind() == Machine.Kind.SLIDING_HEAD;
      if (alike
          && machine.barFeed().capacityMm() >= study.inquiry().bar().acrossCornersMm()
          && machine.maxPieceLengthMm() >= study.inquiry().part().lengthMm()) {
        find(study.inquiry(), derived, practice, machine, plan.money()).ifPresent(all::add);
      }
    }
    return all;
  }

  private static Optional<SequentialStudy> find(
      Inquiry inquiry, Route derived, Practice practice, Machine machine, MoneyStudy drum) {
    GripDiameters diameters = GripDiameters.of(inquiry.part(), inquiry.bar());
    Route route = MachineRoute.adapt(derived, machine, inquiry, practice.allowances());
    return SequentialPlan.of(route, machine, diameters)
        .cycle()
        .map(cycle -> new SequentialStudy(machine, cycle, money(inquiry, machine, cycle, drum)));
  }

  private static MoneyStudy money(
      Inquiry inquiry, Machine machine, SequentialCycle cycle, MoneyStudy drum) {
    Rates rates = inquiry.rates();
    MachineCost cost = machine.cost();
    MoneyCase given = drum.given();
    BigDecimal hour = rates.convert(cost.hourRate(), cost.currency());
    return MoneyStudy.of(
        new MoneyCase(
            given.currency(),
            cycle.cycleS(),
            1,
            stock(given.stock(), machine),
            given.material(),
            given.tools(),
            new MachineTerms(
                machine.title(),
                rates.convert(cost.price(), cost.currency()),
                BigDecimal.ZERO,
                hour,
                cost.setUpH(),
                cost.machinesPerOperatorCount(),
                cost.availabilityPct(),
                machine.barFeed().loading(),
                machine.barFeed().barChangeS()),
            new HourRates(
                hour, rates.labourPerHour(), cost.machinesPerOperatorCount(), rates.setUpPerHour()),
            new YearPlan(
                inquiry.volumes().perYearCount(),
                inquiry.volumes().perLotCount(),
                inquiry.shifts().hoursPerYearH(),
                cost.setUpH(),
                given.plan().startUpScrapPerLotCount()),
            given.scrapPct(),
            given.stopRestartMin()));
  }

  private static BarStock stock(BarStock drum, Machine machine) {
    return new BarStock(
        drum.barLengthMm(),
        machine.barFeed().barLengthMm(),
        machine.barFeed().remnantMm(),
        drum.firstFacingMm(),
        drum.pieceLengthMm(),
        drum.facingMm(),
        drum.kerfMm(),
        drum.areaMm2(),
        drum.densityKgPerDm3(),
        drum.partVolumeMm3());
  }
}
