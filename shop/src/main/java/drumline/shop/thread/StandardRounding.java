package drumline.shop.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds the way the printed tables do, after taking off what binary arithmetic adds. */
final class StandardRounding {

  private static final int NOISE_FREE_DECIMALS = 9;

  private StandardRounding() {}

  static double halfUp(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.HALF_UP);
  }

  static double halfEven(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.HALF_EVEN);
  }

  /** To the next 0.05, as drills are stepped. */
  static double toTwentieth(double value) {
    return halfUp(Math.round(value * 20) / 20.0, 2);
  }

  private static double rounded(double value, int decimals, RoundingMode mode) {
    return BigDecimal.valueOf(value)
        .setScale(NOISE_FREE_DECIMALS, RoundingMode.HALF_EVEN)
        .setScale(decimals, mode)
        .doubleValue();
  }
}
