package drumline.guard.crooked.shop;

import drumline.guard.crooked.cutting.Chip;

/** Breaks a rule: a noun that knows how it is cut, hidden in an array. */
public interface Bolt {
  /** What flies off it. */
  Chip[] chips();
}
