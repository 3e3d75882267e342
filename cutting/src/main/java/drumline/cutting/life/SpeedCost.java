package drumline.cutting.life;

import drumline.cutting.validity.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Cost of a piece as one tool's cutting speed changes.
 *
 * <p>k = k0 + x·(t0 + t) + (t/T)·(y + x·tc), t = s/(1000·V) (min), s the way of the edge through
 * the work: π·d·l/f for turning.
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problem 4.27. The stored transcription
 * of that problem takes one tool's cost term with the other's exponent; here each tool has its own.
 *
 * @param life tool life by speed
 * @param changeMin time tc to change the edge, 0 or more
 * @param idleMin time t0 of each piece outside the cut, 0 or more
 * @param cuttingWayMm way s of the edge through the work, above 0
 * @param fixedPerPiece cost k0 of each piece that does not depend on the speed, 0 or more
 * @param edgePrice price y of one edge or regrind, 0 or more
 * @param machineRatePerHour cost of an hour (60·x), above 0
 */
public record SpeedCost(
    TaylorToolLife life,
    double changeMin,
    double idleMin,
    double cuttingWayMm,
    BigDecimal fixedPerPiece,
    BigDecimal edgePrice,
    BigDecimal machineRatePerHour) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SpeedCost {
    Require.notNegative("changeMin", changeMin);
    Require.notNegative("idleMin", idleMin);
    Require.positive("cuttingWayMm", cuttingWayMm);
    Require.notNegative("fixedPerPiece", fixedPerPiece.doubleValue());
    Require.notNegative("edgePrice", edgePrice.doubleValue());
    Require.positive("machineRatePerHour", machineRatePerHour.doubleValue());
  }

  /**
   * Way of the edge in turning: π·d·l/f.
   *
   * @param diameterMm diameter d, above 0
   * @param lengthMm length l, above 0
   * @param feedMmPerRev feed f, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double turningWayMm(double diameterMm, double lengthMm, double feedMmPerRev) {
    Require.positive("diameterMm", diameterMm);
    Require.positive("lengthMm", lengthMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    return Math.PI * diameterMm * lengthMm / feedMmPerRev;
  }

  /**
   * Cost of a piece, to four decimals of the currency.
   *
   * @param speedMPerMin cutting speed V, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public BigDecimal perPiece(double speedMPerMin) {
    double cutMin = cuttingWayMm / (1000 * speedMPerMin);
    double edges = cutMin / life.lifeMin(speedMPerMin);
    BigDecimal minutes = BigDecimal.valueOf(idleMin + cutMin + edges * changeMin);
    BigDecimal machine =
        machineRatePerHour
            .multiply(minutes)
            .divide(BigDecimal.valueOf(60), 10, RoundingMode.HALF_UP);
    return fixedPerPiece
        .add(machine)
        .add(edgePrice.multiply(BigDecimal.valueOf(edges)))
        .setScale(4, RoundingMode.HALF_UP);
  }

  /** Cutting speed of the lowest cost, without regard to any limit of machine or tool. */
  public double cheapestMPerMin() {
    EconomicToolLife economic = new EconomicToolLife(life.exponentRatio(), changeMin);
    return life.speedMPerMin(economic.cheapestMin(edgePrice, machineRatePerHour));
  }
}
