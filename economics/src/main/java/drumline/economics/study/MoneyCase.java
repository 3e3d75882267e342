package drumline.economics.study;

import drumline.economics.bar.BarStock;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.output.YearPlan;
import drumline.economics.tool.ToolWear;
import java.util.List;

/**
 * Everything that output and cost of one layout on one machine are computed from; all money in one
 * currency.
 *
 * @param currency ISO 4217 code
 * @param cycleS time from one index to the next
 * @param piecesPerIndexCount finished pieces at each index
 * @param stock bar and what a piece takes from it
 * @param material prices of bar and chips
 * @param tools wear of each tool of the layout
 * @param machine the machine's terms
 * @param rates what hours cost
 * @param plan the year
 * @param scrapPct share of pieces that are not good
 * @param stopRestartMin minutes to stop, start again and check, for each tool stop
 */
public record MoneyCase(
    String currency,
    double cycleS,
    int piecesPerIndexCount,
    BarStock stock,
    MaterialPrice material,
    List<ToolWear> tools,
    MachineTerms machine,
    HourRates rates,
    YearPlan plan,
    double scrapPct,
    double stopRestartMin) {

  /** Copies the list. */
  public MoneyCase {
    tools = List.copyOf(tools);
  }
}
