package drumline.shop.machine;

/** Whether a piece of equipment is there. */
public enum Fitting {
  /** Part of the machine. */
  FITTED,
  /** Can be had at a price. */
  OPTION,
  /** Cannot be had. */
  NONE
}
