package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Reaming a hole, out again at feed where bell-mouthing must be kept small.
 *
 * <p>travel = la + l + A + lo, A the chamfer lead; t = 60·travel/(f·n), twice when the reamer comes
 * out at feed.
 *
 * <p>Source: [BASIS] 2.3; speed half that of drilling (high-speed steel), feed 2–3 times, stock
 * 0.1–0.3 mm on the diameter, out at feed for IT8 and finer: from memory, common practice.
 *
 * @param depthMm length l, above 0
 * @param leadMm chamfer lead A that must pass the end, 0 or more (1–3 mm)
 * @param approachMm approach la at feed, 0 or more
 * @param overrunMm overrun lo, 0 or more
 * @param feedMmPerRev feed f, above 0
 * @param out how the reamer comes out
 */
public record ReamPass(
    double depthMm,
    double leadMm,
    double approachMm,
    double overrunMm,
    double feedMmPerRev,
    Out out) {
  /** How the reamer comes out. */
  public enum Out {
    /** At rapid, counted with the tool's retract. */
    AT_RAPID,
    /** At feed, with the spindle turning on. */
    AT_FEED
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ReamPass {
    Require.positive("depthMm", depthMm);
    Require.notNegative("leadMm", leadMm);
    Require.notNegative("approachMm", approachMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** Revolutions that the pass takes, whatever the speed. */
  public double revolutionsCount() {
    double travelMm = approachMm + depthMm + leadMm + overrunMm;
    return (out == Out.AT_FEED ? 2 : 1) * travelMm / feedMmPerRev;
  }

  /**
   * Time of the pass.
   *
   * @param speedRevPerMin speed n between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }
}
