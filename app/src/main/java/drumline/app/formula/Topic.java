package drumline.app.formula;

import java.util.Locale;

/** Chapter of the catalogue under which a formula stands. */
public enum Topic {
  /** Force, power and torque of any cut. */
  FORCE,
  /** Turning, facing, boring, form tools. */
  TURNING,
  /** Grooves and cut-off. */
  PARTING,
  /** Holes made from the end. */
  DRILLING,
  /** Threads. */
  THREADING,
  /** Surfaces, knurls, edges. */
  FINISHING,
  /** Milling, flats and cross work with live tools. */
  LIVE_TOOLS,
  /** Slotting and broaching with a tool that does not turn. */
  SLOTTING,
  /** What a drive can give. */
  DRIVES,
  /** What collet and chuck hold. */
  GRIPPING,
  /** Bending, whirling and balance. */
  STIFFNESS,
  /** How long edges last and which speed pays. */
  TOOL_LIFE,
  /** Bars, output and money. */
  OUTPUT_AND_MONEY,
  /** Figures of standards. */
  STANDARDS;

  /** The topic in words, e.g. {@code "tool life"}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
