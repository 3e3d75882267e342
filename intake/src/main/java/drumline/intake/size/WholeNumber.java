package drumline.intake.size;

import drumline.intake.form.Block;
import drumline.intake.form.Range;

/** Reads a number that must be whole, such as a count of holes. */
public final class WholeNumber {

  private WholeNumber() {}

  /** The number under a key, or another where the key is absent. */
  public static int read(Block block, String key, Range range, int otherwise) {
    return block
        .find(key)
        .map(
            field -> {
              double value = field.number(range);
              if (!Double.isNaN(value) && value != Math.rint(value)) {
                field.report("not-whole", field.node().words(), "a whole number", "");
              }
              return (int) Math.round(value);
            })
        .orElse(otherwise);
  }
}
