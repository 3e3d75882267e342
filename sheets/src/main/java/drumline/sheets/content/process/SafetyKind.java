package drumline.sheets.content.process;

/**
 * What can happen to people, and the caution that stands beside its figure.
 *
 * <p>Source: [I23125] scope, [SCHUNK] and [OPTIMUM] quoting VDI 3106 and EN 1550, [PM18] for whip
 * of bars, [FBHM], [IFA], [TM106] and [LION] for fire.
 */
public enum SafetyKind {
  /** The piece slips or flies out of the collet. */
  CLAMPING(
      "The grip must be measured on the machine, at standstill and at speed, with the collets and the"
          + " bar of the job. The maker's limits for collet and spindle come first."),
  /** A bar whips in its guide. */
  BAR_SPEED(
      "The whole bar must lie in its guide, straight and with the right liner. Start slowly, guards"
          + " closed, and raise the speed only while the bar runs quietly."),
  /** Slender or unbalanced stock bends out. */
  SLENDER(
      "Slender or unbalanced stock can bend out and strike. Prove the speed in steps, guards closed."),
  /** Oil catches fire. */
  OIL_FIRE(
      "Oil mist can ignite when a tool breaks or coolant fails. Extraction, pressure relief and an"
          + " automatic extinguisher that stops spindle and oil pump are needed; see local codes."),
  /** Titanium chips catch fire. */
  TITANIUM_FIRE(
      "Fine titanium chips burn. Keep edges sharp, take chips away often, keep dry powder or sand for"
          + " metal fires at hand; never water or carbon dioxide on burning chips."),
  /** Magnesium chips catch fire. */
  MAGNESIUM_FIRE(
      "Magnesium chips burn, and water-mixed coolant sets hydrogen free. Keep edges sharp and feeds up,"
          + " keep a class D extinguisher or dry sand at hand; never water or carbon dioxide.");

  private final String caution;

  SafetyKind(String caution) {
    this.caution = caution;
  }

  /** The caution in plain sentences. */
  public String caution() {
    return caution;
  }
}
