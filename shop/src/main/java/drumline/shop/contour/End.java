package drumline.shop.contour;

/** One of the two ends of the piece. */
public enum End {
  /** The end away from the collet, z = 0. */
  FRONT,
  /** The cut-off side, z = length of the piece. */
  BACK
}
