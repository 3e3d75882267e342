package drumline.economics.tool;

import drumline.economics.Amount;
import drumline.economics.Range;
import drumline.shop.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Edges used, what they cost and how long the machine stands for them.
 *
 * <p>The edge that makes the fewest pieces N sets a common stop every N pieces. Every other tool
 * with p pieces per edge is either changed at each ⌊p/N⌋-th common stop, sharing the minutes of
 * stopping and starting again, or at a stop of its own when it is worn, whichever costs less:
 * common (y + c·m)/(⌊p/N⌋·N) against own (y + c·(m + s))/p.
 *
 * <ul>
 *   <li>y price of an edge; c cost of a machine minute, same currency
 *   <li>m minutes to change the edge; s minutes to stop, start again and check the first piece
 *   <li>p, N pieces
 * </ul>
 *
 * Changes in one stop are done one after the other. Source: common practice; downtime of a tool per
 * piece as in [GRO-DOWN].
 *
 * @param uses each tool, in the order given
 * @param commonStopEveryCount pieces between common stops; 0 without tools
 * @param stopsPer1000Count stops for 1000 pieces, common and own
 * @param stopMinPerPiece minutes that the machine stands for tools, for one piece
 * @param costPerPiece cost of edges for one piece
 * @param problems tools that do not last one piece
 */
public record ToolConsumption(
    List<ToolUse> uses,
    long commonStopEveryCount,
    double stopsPer1000Count,
    double stopMinPerPiece,
    BigDecimal costPerPiece,
    List<Problem> problems) {

  /** Copies the lists. */
  public ToolConsumption {
    uses = List.copyOf(uses);
    problems = List.copyOf(problems);
  }

  /**
   * The consumption of a layout's tools.
   *
   * @param wears tools
   * @param stopRestartMin minutes to stop, start again and check the first piece, once for each
   *     stop
   * @param machinePerMinute what a minute of the machine costs
   * @throws IllegalArgumentException if minutes or cost are below 0
   */
  public static ToolConsumption of(
      List<ToolWear> wears, double stopRestartMin, BigDecimal machinePerMinute) {
    Range.notNegative("stopRestartMin", stopRestartMin);
    Range.notNegative("machinePerMinute", machinePerMinute);
    long beat = wears.stream().mapToLong(ToolConsumption::changeable).min().orElse(0);
    List<ToolUse> uses = new ArrayList<>();
    double stopsPerPiece = beat == 0 ? 0 : 1.0 / beat;
    double changingMin = 0;
    BigDecimal cost = BigDecimal.ZERO;
    for (ToolWear wear : wears) {
      ToolUse use = use(wear, beat, stopRestartMin, machinePerMinute);
      uses.add(use);
      stopsPerPiece += use.plan() == ToolUse.Plan.OWN_STOP ? 1.0 / use.changedEveryCount() : 0;
      changingMin += use.changeMinPerPiece();
      cost = cost.add(use.costPerPiece());
    }
    return new ToolConsumption(
        uses,
        beat,
        1000 * stopsPerPiece,
        changingMin + stopsPerPiece * stopRestartMin,
        cost,
        problems(wears));
  }

  private static ToolUse use(
      ToolWear wear, long beat, double stopRestartMin, BigDecimal machinePerMinute) {
    long own = changeable(wear);
    long common = own / beat * beat;
    BigDecimal perCommon =
        wear.pricePerEdge().add(Amount.times(machinePerMinute, wear.changeMin()));
    BigDecimal perOwn =
        wear.pricePerEdge().add(Amount.times(machinePerMinute, wear.changeMin() + stopRestartMin));
    boolean together =
        own == beat
            || Amount.over(perCommon, (double) common).compareTo(Amount.over(perOwn, (double) own))
                <= 0;
    long every = together ? common : own;
    double edgesPerPiece = edgesPerChange(wear) / every;
    return new ToolUse(
        wear,
        together ? ToolUse.Plan.COMMON_STOP : ToolUse.Plan.OWN_STOP,
        every,
        1000 * edgesPerPiece,
        Amount.perPiece(Amount.times(wear.pricePerEdge(), edgesPerPiece)),
        wear.changeMin() * edgesPerPiece);
  }

  private static long changeable(ToolWear wear) {
    return Math.max(1, wear.piecesPerEdgeCount());
  }

  private static double edgesPerChange(ToolWear wear) {
    return wear.piecesPerEdgeCount() >= 1 ? 1 : Math.ceil(wear.cutS() / (60 * wear.lifeMin()));
  }

  private static List<Problem> problems(List<ToolWear> wears) {
    return wears.stream()
        .filter(wear -> wear.piecesPerEdgeCount() < 1)
        .map(
            wear ->
                Problem.error(
                    "edge-worn-within-a-piece",
                    "operation " + wear.operationId(),
                    String.format(
                        Locale.ROOT,
                        "an edge lasts %.2f min, the cut takes %.2f min",
                        wear.lifeMin(),
                        wear.cutS() / 60),
                    "an edge that finishes at least one piece",
                    "Maybe the cutting speed is too high for this tool material."))
        .toList();
  }
}
