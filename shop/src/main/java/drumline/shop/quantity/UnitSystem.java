package drumline.shop.quantity;

/** The unit system a file or a screen declares; it decides what a bare number means. */
public enum UnitSystem {
  /** A bare length is in mm, a bare cutting speed in m/min. */
  METRIC,
  /** A bare length is in inches, a bare cutting speed in ft/min. */
  INCH
}
