package drumline.intake.machine;

import drumline.intake.form.Block;
import drumline.intake.form.Range;
import drumline.shop.quantity.QuantityKind;

/** Reads a run-up, written as the time from rest to the highest speed. */
final class RunUp {

  private RunUp() {}

  /**
   * Change of speed in a second, taken as even: highest speed / time.
   *
   * @param block the block
   * @param key key of the time
   * @param highestRevPerMin highest speed, above 0; NaN where it is not known
   */
  static double revPerMinPerS(Block block, String key, double highestRevPerMin) {
    return highestRevPerMin / block.quantity(key, QuantityKind.TIME, Range.POSITIVE);
  }
}
