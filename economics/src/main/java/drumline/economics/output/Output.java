package drumline.economics.output;

import drumline.economics.Range;
import java.util.List;

/**
 * Pieces per hour and per year, with every loss counted once.
 *
 * <pre>
 * gross per hour   3600·q / T
 * made per hour    3600 / (T/q + Σ d) · A
 * net per hour     made per hour · (1 − s)           good pieces
 * hours needed     (V/(1 − s) + lots·u) / made per hour + lots·set-up
 * machines         ⌈hours needed / planned hours⌉
 * </pre>
 *
 * <ul>
 *   <li>T cycle, s, above 0; q pieces at each index, 1 or more
 *   <li>d stops for bars and tools, s per piece, 0 or more: counted here, so not in A
 *   <li>A availability, above 0 to 1: breakdowns and waiting only
 *   <li>s share of scrap, 0 or more and below 1; u pieces lost at the start of a lot
 *   <li>V good pieces in a year
 * </ul>
 *
 * Set-up hours are counted apart, so not in A either. Source: [GRO-DOWN], [GRO-30] (Tp = Tc +
 * F·Td); availability and quality as factors: [ISO-22400-2], from memory.
 *
 * @param plan the year it was computed for
 * @param availabilityPct availability it was computed with
 * @param scrapPct scrap it was computed with
 * @param grossPerHour pieces per hour if nothing ever stopped
 * @param madePerHour pieces cut off per planned hour of running, set-up aside
 * @param netPerHour good pieces per planned hour of running, set-up aside
 * @param efficiencyPct net over gross
 * @param times where the seconds of one good piece go; they add up to 3600 / net per hour
 * @param goodPerYearCount good pieces that one machine can make in a year in lots of this size
 * @param lotsPerYearCount set-ups in a year
 * @param setUpHPerYear hours of setting up in a year, all machines
 * @param neededHPerYear hours to make the year's pieces, set-up included
 * @param machinesCount machines needed
 * @param loadPct hours needed over hours of the machines needed
 */
public record Output(
    YearPlan plan,
    double availabilityPct,
    double scrapPct,
    double grossPerHour,
    double madePerHour,
    double netPerHour,
    double efficiencyPct,
    List<TimeShare> times,
    long goodPerYearCount,
    long lotsPerYearCount,
    double setUpHPerYear,
    double neededHPerYear,
    int machinesCount,
    double loadPct) {

  /** Copies the list. */
  public Output {
    times = List.copyOf(times);
  }

  /**
   * The output of a machine.
   *
   * @param cycleS time from one index to the next
   * @param piecesPerIndexCount finished pieces at each index
   * @param stops what the machine stands for
   * @param availabilityPct share of planned time that is neither breakdown nor waiting
   * @param scrapPct share of pieces that are not good, start of lots aside
   * @param plan the year
   * @throws IllegalArgumentException if a quantity is outside its range
   */
  public static Output of(
      double cycleS,
      int piecesPerIndexCount,
      List<StopLoss> stops,
      double availabilityPct,
      double scrapPct,
      YearPlan plan) {
    Range.positive("piecesPerIndexCount", piecesPerIndexCount);
    double pieceS = Range.positive("cycleS", cycleS) / piecesPerIndexCount;
    double available = Range.usablePct("availabilityPct", availabilityPct) / 100;
    double good = 1 - Range.lossPct("scrapPct", scrapPct) / 100;
    double stopS = stops.stream().mapToDouble(StopLoss::perPieceS).sum();
    double made = 3600 / (pieceS + stopS) * available;
    double setUpH = plan.lotsCount() * plan.setUpH();
    double toMake =
        plan.goodPerYearCount() / good + (double) plan.lotsCount() * plan.startUpScrapPerLotCount();
    double neededH = toMake / made + setUpH;
    int machines = (int) Math.max(1, Math.ceil(neededH / plan.plannedH() - 1e-9));
    return new Output(
        plan,
        availabilityPct,
        scrapPct,
        3600 / pieceS,
        made,
        made * good,
        100 * made * good * pieceS / 3600,
        TimeShare.list(pieceS, stops, available, good),
        goodPerYear(made, good, plan),
        plan.lotsCount(),
        setUpH,
        neededH,
        machines,
        100 * neededH / (machines * plan.plannedH()));
  }

  /** Whole lots' worth of one machine's year, each with its set-up and its start-up scrap. */
  private static long goodPerYear(double made, double good, YearPlan plan) {
    double lotH =
        (plan.goodPerLotCount() / good + plan.startUpScrapPerLotCount()) / made + plan.setUpH();
    return (long) Math.floor(plan.plannedH() / lotH * plan.goodPerLotCount());
  }
}
