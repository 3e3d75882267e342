package drumline.drawing.svg;

import java.util.Locale;

/** Patterns that tell kinds apart without colour. */
public enum HatchKind {
  /** Thin lines rising to the right: cut material. */
  SECTION,
  /** The same, closer, for small pictures. */
  FINE_SECTION,
  /** Faint lines far apart: time in which nothing is cut. */
  BAND,
  /** Close lines rising to the right: turning. */
  RISING,
  /** Close lines falling to the right: boring. */
  FALLING,
  /** Upright lines: drilling and reaming. */
  UPRIGHT,
  /** Level lines: grooving and parting. */
  LEVEL,
  /** Two crossing sets of lines: threads. */
  CROSSED,
  /** Dots: driven tools. */
  DOTTED,
  /** Short waves: rolling, knurling and deburring. */
  WAVED,
  /** Sparse dots: tools that move without cutting. */
  SPARSE,
  /** Lines in the accent colour: what was just removed. */
  REMOVED,
  /** Level lines far apart: straight knurl. */
  KNURL_STRAIGHT,
  /** Crossing lines far apart: diamond knurl. */
  KNURL_DIAMOND,
  /** Upright lines and level lines: a plain grid. */
  GRID,
  /** Solid tone. */
  SOLID;

  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
