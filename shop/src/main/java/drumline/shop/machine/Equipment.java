package drumline.shop.machine;

/** Equipment that some operations need on a slide or spindle. */
public enum Equipment {
  /** Driven tools on the slide. */
  LIVE_TOOL,
  /** Y axis on the slide: movement square to X and Z. */
  Y_AXIS,
  /** Spindle that can be held at an angle or turned as a controlled axis. */
  C_AXIS,
  /** Cutter geared to the spindle. */
  POLYGON_DRIVE
}
