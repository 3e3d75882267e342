package drumline.economics.tool;

import drumline.economics.Amount;
import drumline.economics.Range;
import drumline.shop.operation.Operation;
import java.math.BigDecimal;

/**
 * One tool's wear in one layout.
 *
 * @param operationId operation that it does
 * @param toolLabel as the tool list names it
 * @param cutS cutting time for one piece
 * @param lifeMin minutes that an edge cuts
 * @param limit what sets the life
 * @param pricePerEdge price of the tool shared among its edges, in the study's currency
 * @param changeMin minutes to change one edge once the machine stands
 */
public record ToolWear(
    String operationId,
    String toolLabel,
    double cutS,
    double lifeMin,
    LifeLimit limit,
    BigDecimal pricePerEdge,
    double changeMin) {

  /** What sets an edge's life. */
  public enum LifeLimit {
    /** Wear at the cutting speed, after Taylor. */
    WEAR,
    /** The longest life that a plan counts on, shorter than Taylor's. */
    LONGEST_COUNTED_ON
  }

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if a time is not above 0, or price or change below 0
   */
  public ToolWear {
    Range.positive("cutS", cutS);
    Range.positive("lifeMin", lifeMin);
    Range.notNegative("pricePerEdge", pricePerEdge);
    Range.notNegative("changeMin", changeMin);
  }

  /**
   * Wear of an operation's tool at the layout's speed.
   *
   * @param operation the operation
   * @param spindleRevPerMin work spindle's speed; 0 when held
   * @param longestLifeMin longest life to count on; what Taylor promises beyond it is not believed
   * @param toolPrice price of the tool in the study's currency
   */
  public static ToolWear of(
      Operation operation, double spindleRevPerMin, double longestLifeMin, BigDecimal toolPrice) {
    double speed = operation.cut().cuttingSpeedMPerMin(spindleRevPerMin);
    double taylorMin =
        speed > 0 ? TaylorLife.lifeMin(operation.cut().life(), speed) : Double.POSITIVE_INFINITY;
    boolean worn = taylorMin <= longestLifeMin;
    int edges = operation.tool().family().edgesCount();
    return new ToolWear(
        operation.id(),
        operation.tool().label(),
        operation.cut().cutS(spindleRevPerMin),
        worn ? taylorMin : longestLifeMin,
        worn ? LifeLimit.WEAR : LifeLimit.LONGEST_COUNTED_ON,
        toolPrice.divide(BigDecimal.valueOf(edges), Amount.DIGITS),
        operation.tool().family().changeMin());
  }

  /**
   * Whole pieces that one edge finishes: ⌊60·T / t⌋; 0 when it is worn before the first is done.
   */
  public long piecesPerEdgeCount() {
    return (long) Math.floor(60 * lifeMin / cutS + 1e-9);
  }

  /** The same tool with another life. */
  public ToolWear withLifeMin(double newLifeMin) {
    return new ToolWear(operationId, toolLabel, cutS, newLifeMin, limit, pricePerEdge, changeMin);
  }

  /** The same tool with another time to change it. */
  public ToolWear withChangeMin(double newChangeMin) {
    return new ToolWear(operationId, toolLabel, cutS, lifeMin, limit, pricePerEdge, newChangeMin);
  }

  /** The same tool at another price. */
  public ToolWear withPricePerEdge(BigDecimal newPricePerEdge) {
    return new ToolWear(operationId, toolLabel, cutS, lifeMin, limit, newPricePerEdge, changeMin);
  }
}
