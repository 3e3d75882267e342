package drumline.shop.operation;

/** Where an operation can be done. */
public enum WorkEnd {
  /** On the drum, in the bar. */
  FRONT,
  /** In the pick-up spindle, after cut-off. */
  BACK,
  /** Either. */
  EITHER
}
