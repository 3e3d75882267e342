package drumline.shop.machine;

/** Linear axes that a slide may have. */
public enum Axis {
  /** Across the spindle. */
  X,
  /** Square to both. */
  Y,
  /** Along the spindle. */
  Z
}
