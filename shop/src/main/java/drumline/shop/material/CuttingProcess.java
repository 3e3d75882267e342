package drumline.shop.material;

/** Ways of cutting or forming for which a material has its own window of cutting values. */
public enum CuttingProcess {
  /** Rough turning and facing. */
  TURN_ROUGH,
  /** Finish turning and facing. */
  TURN_FINISH,
  /** Rough boring. */
  BORE_ROUGH,
  /** Finish boring. */
  BORE_FINISH,
  /** Grooves and recesses, form tools. */
  GROOVE,
  /** Parting the piece from the bar. */
  CUT_OFF,
  /** Drilling; feed in the window is per mm of diameter. */
  DRILL,
  /** Reaming. */
  REAM,
  /** Tapping with a cutting tap. */
  TAP,
  /** Tapping with a forming tap. */
  FORM_TAP,
  /** Single-point threads. */
  THREAD_TURN,
  /** Rolled threads. */
  THREAD_ROLL,
  /** Knurling. */
  KNURL,
  /** Milling with driven tools; feed in the window is per tooth. */
  MILL,
  /** Slotting with a tool that does not rotate; feed in the window is depth per stroke. */
  SLOT,
  /** Engraving; feed in the window is per revolution of the cutter. */
  ENGRAVE,
  /** Roller burnishing. */
  BURNISH;

  /** Whether the feed of the window is a span of thread pitches, which no cutting value changes. */
  public boolean feedIsPitch() {
    return this == TAP || this == FORM_TAP || this == THREAD_TURN || this == THREAD_ROLL;
  }
}
