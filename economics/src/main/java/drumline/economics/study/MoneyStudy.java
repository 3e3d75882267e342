package drumline.economics.study;

import drumline.economics.Amount;
import drumline.economics.bar.BarYield;
import drumline.economics.cost.CostLine;
import drumline.economics.cost.PieceCost;
import drumline.economics.output.BarStop;
import drumline.economics.output.Output;
import drumline.economics.output.StopLoss;
import drumline.economics.tool.ToolConsumption;
import java.math.BigDecimal;
import java.util.List;

/**
 * Output and cost of one layout on one machine.
 *
 * @param given what it was computed from
 * @param bar what comes out of a bar
 * @param tools edges used
 * @param output pieces per hour and year
 * @param cost cost of a good piece
 */
public record MoneyStudy(
    MoneyCase given, BarYield bar, ToolConsumption tools, Output output, PieceCost cost) {

  /**
   * The study of a case.
   *
   * @throws IllegalArgumentException if a bar is too short for one piece or a quantity is outside
   *     its range
   */
  public static MoneyStudy of(MoneyCase given) {
    MachineTerms machine = given.machine();
    BarYield bar = BarYield.of(given.stock());
    ToolConsumption tools =
        ToolConsumption.of(
            given.tools(), given.stopRestartMin(), Amount.over(standingPerHour(given), 60));
    StopLoss bars =
        BarStop.of(
            machine.loading(), machine.barChangeS(), given.cycleS(), bar.piecesPerLoadCount());
    Output output =
        Output.of(
            given.cycleS(),
            given.piecesPerIndexCount(),
            List.of(bars, new StopLoss("tool changes", 60 * tools.stopMinPerPiece())),
            machine.availabilityPct(),
            given.scrapPct(),
            given.plan());
    PieceCost cost =
        PieceCost.of(
            given.currency(),
            given.material().perPiece(bar),
            tools.costPerPiece(),
            output,
            given.rates());
    return new MoneyStudy(given, bar, tools, output, cost);
  }

  /** What an hour costs in which the machine stands for a change: machine and its people. */
  private static BigDecimal standingPerHour(MoneyCase given) {
    return given
        .rates()
        .machinePerHour()
        .add(Amount.over(given.rates().labourPerHour(), given.rates().machinesPerOperatorCount()));
  }

  /** What all machines needed cost with their options. */
  public BigDecimal investment() {
    return given.machine().investment().multiply(BigDecimal.valueOf(output.machinesCount()));
  }

  /**
   * Write-off of the investment that the piece costs of a year contain: straight-line, for the
   * share of its time that the machine works on this piece.
   */
  public BigDecimal writeOffPerYear(double writeOffYearsCount) {
    return Amount.times(Amount.over(investment(), writeOffYearsCount), output.loadPct() / 100);
  }

  /** Cost of a lot: set-up, and each further good piece. */
  public CostLine lotLine() {
    BigDecimal setUp = Amount.times(given.rates().setUpPerHour(), given.plan().setUpH());
    return new CostLine(given.machine().title(), setUp, cost.runningPerPiece());
  }

  /**
   * Cost of a year when the investment is paid for by this piece alone: its straight-line yearly
   * share whatever the volume, and each good piece without the write-off in its hour rate. Known
   * limit: the number of machines is that of the study's own volume.
   */
  public CostLine yearLine(double writeOffYearsCount) {
    BigDecimal writeOffPerPiece =
        Amount.over(writeOffPerYear(writeOffYearsCount), (double) given.plan().goodPerYearCount());
    return new CostLine(
        given.machine().title(),
        Amount.over(investment(), writeOffYearsCount),
        cost.total().subtract(writeOffPerPiece));
  }
}
