package drumline.economics.output;

import drumline.economics.Range;
import drumline.shop.machine.BarFeed.Loading;

/**
 * How long the drum stands for new bars.
 *
 * <p>Each spindle's bar makes n pieces, so one bar is loaded for every n pieces, whichever spindle
 * it is for. Bars are loaded one spindle at a time: when those of several spindles run out together
 * their stops add up, and the loss for one piece stays t / n. Loading in the shadow hides as much
 * of t as one cycle lasts; only the rest is lost.
 *
 * <ul>
 *   <li>t time to load one bar, s, 0 or more; n pieces of one loaded bar, 1 or more
 * </ul>
 *
 * Source: derived; loading times in use from memory, weak.
 */
public final class BarStop {
  private BarStop() {}

  /**
   * Seconds for one piece.
   *
   * @throws IllegalArgumentException if a time is below 0 or there is no piece in a bar
   */
  public static StopLoss of(
      Loading loading, double barChangeS, double cycleS, int piecesPerLoadCount) {
    Range.notNegative("barChangeS", barChangeS);
    Range.positive("cycleS", cycleS);
    Range.positive("piecesPerLoadCount", piecesPerLoadCount);
    double standsS =
        switch (loading) {
          case STOPPED -> barChangeS;
          case IN_SHADOW -> Math.max(0, barChangeS - cycleS);
        };
    return new StopLoss("new bars", standsS / piecesPerLoadCount);
  }
}
