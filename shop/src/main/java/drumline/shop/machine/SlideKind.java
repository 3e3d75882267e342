package drumline.shop.machine;

/** Where a tool slide works from. */
public enum SlideKind {
  /** Beside the spindle: works from the side. */
  CROSS,
  /** Facing the spindle: works from the end. */
  END,
  /** Tool block of the pick-up spindle: works on the cut-off side. */
  BACK
}
