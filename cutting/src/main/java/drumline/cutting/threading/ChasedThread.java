package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Time of a thread chased with a single point in several passes.
 *
 * <p>t = (N·starts + spring·starts)·[60·(l + li + lo)/(lead·n) + tr] (s).
 *
 * <p>Source: [BASIS] 2.5, derived.
 *
 * @param lengthMm length l of thread, above 0
 * @param runInMm run-in li before the thread, 0 or more, see {@link ThreadRunIn}
 * @param runOutMm run-out lo behind it, 0 or more
 * @param leadMm lead: pitch times starts, above 0
 * @param startsCount starts of the thread, at least 1
 * @param passesCount passes N with infeed for each start, at least 1
 * @param springPassesCount passes without infeed for each start, 0 or more
 * @param returnS time tr to lift, return and feed in again, 0 or more
 */
public record ChasedThread(
    double lengthMm,
    double runInMm,
    double runOutMm,
    double leadMm,
    int startsCount,
    int passesCount,
    int springPassesCount,
    double returnS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ChasedThread {
    Require.positive("lengthMm", lengthMm);
    Require.notNegative("runInMm", runInMm);
    Require.notNegative("runOutMm", runOutMm);
    Require.positive("leadMm", leadMm);
    Require.atLeast("startsCount", startsCount, 1);
    Require.atLeast("passesCount", passesCount, 1);
    Require.atLeast("springPassesCount", springPassesCount, 0);
    Require.notNegative("returnS", returnS);
  }

  /** All passes of all starts. */
  public int allPassesCount() {
    return startsCount * (passesCount + springPassesCount);
  }

  /**
   * Time of all passes.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double passS = 60 * (lengthMm + runInMm + runOutMm) / (leadMm * speedRevPerMin);
    return allPassesCount() * (passS + returnS);
  }
}
