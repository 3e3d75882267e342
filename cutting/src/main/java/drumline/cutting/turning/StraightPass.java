package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * One straight pass of a turning, boring or facing tool at constant spindle speed.
 *
 * <p>t = 60·(la + l + lo)/(f·n) (s). For facing, l is the travel along the radius.
 *
 * <p>Source: [SHARMA] Sharma, Production Engineering, 11th edition, problem 4.12; approach 0.5–2 mm
 * and overrun 0–1 mm are from memory.
 *
 * @param lengthMm length l in cut, above 0
 * @param approachMm approach la at feed, 0 or more
 * @param overrunMm overrun lo, 0 or more
 * @param feedMmPerRev feed f, above 0
 */
public record StraightPass(
    double lengthMm, double approachMm, double overrunMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public StraightPass {
    Require.positive("lengthMm", lengthMm);
    Require.notNegative("approachMm", approachMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** Revolutions that the pass takes, whatever the speed. */
  public double revolutionsCount() {
    return (approachMm + lengthMm + overrunMm) / feedMmPerRev;
  }

  /**
   * Time of the pass.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }
}
