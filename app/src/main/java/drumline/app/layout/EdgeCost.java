package drumline.app.layout;

import drumline.economics.study.Assumptions;
import drumline.economics.tool.ToolWear;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.operation.Operation;
import java.math.BigDecimal;
import java.util.function.ToDoubleBiFunction;

/** What edges of one operation and their changes cost for one piece, to compare speeds by. */
public final class EdgeCost implements ToDoubleBiFunction<Operation, Double> {
  private final Inquiry inquiry;
  private final double standingPerMin;
  private final double longestLifeMin = Assumptions.usual().longestLifeMin();

  /** Costs in an inquiry's currency, standing at a machine's rate. */
  public EdgeCost(Inquiry inquiry, Machine machine) {
    this.inquiry = inquiry;
    MachineCost cost = machine.cost();
    BigDecimal hour = inquiry.rates().convert(cost.hourRate(), cost.currency());
    this.standingPerMin = hour.doubleValue() / 60;
  }

  /** (price of an edge + minutes of its change · cost of a minute) · cutting time / tool life. */
  @Override
  public double applyAsDouble(Operation operation, Double spindleRevPerMin) {
    BigDecimal price =
        inquiry.rates().convert(operation.tool().price(), operation.tool().family().currency());
    ToolWear wear = ToolWear.of(operation, spindleRevPerMin, longestLifeMin, price);
    double edge = wear.pricePerEdge().doubleValue() + wear.changeMin() * standingPerMin;
    return edge * wear.cutS() / (60 * wear.lifeMin());
  }
}
