package drumline.shop.standard;

/** How bright bar was finished. */
public enum BarFinish {
  /** Cold drawn, +C. */
  DRAWN,
  /** Peeled or rough turned, +SH. */
  TURNED,
  /** Ground, +SL. */
  GROUND,
  /** Polished, +PL. */
  POLISHED
}
