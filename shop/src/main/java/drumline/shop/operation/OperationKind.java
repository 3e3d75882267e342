package drumline.shop.operation;

/** Kinds of operations, in the words of a process sheet. */
public enum OperationKind {
  /** Face turned square. */
  FACE("face"),
  /** Outside turned with allowance left. */
  ROUGH_TURN("rough turn"),
  /** Outside turned to size. */
  FINISH_TURN("finish turn"),
  /** Outside shaped by a form tool fed square to the axis. */
  FORM_TURN("form turn"),
  /** Outside groove. */
  GROOVE("groove"),
  /** Groove in a bore. */
  INSIDE_GROOVE("inside groove"),
  /** Groove in a face. */
  FACE_GROOVE("face groove"),
  /** Spotted so that a drill starts true. */
  SPOT("spot"),
  /** Drilled. */
  DRILL("drill"),
  /** Flat-bottomed or enlarged by drilling. */
  COUNTERBORE("counterbore"),
  /** Bored with allowance left. */
  ROUGH_BORE("rough bore"),
  /** Bored to size. */
  FINISH_BORE("finish bore"),
  /** Reamed. */
  REAM("ream"),
  /** Thread tapped. */
  TAP("tap"),
  /** Thread formed with a forming tap. */
  FORM_TAP("form tap"),
  /** Thread cut in passes. */
  THREAD_TURN("turn thread"),
  /** Thread rolled. */
  THREAD_ROLL("roll thread"),
  /** Knurled. */
  KNURL("knurl"),
  /** Hole drilled from the side. */
  CROSS_DRILL("cross drill"),
  /** Thread tapped from the side. */
  CROSS_TAP("cross tap"),
  /** Hole drilled off centre in a face. */
  FACE_DRILL("drill face holes"),
  /** Thread tapped off centre in a face. */
  FACE_TAP("tap face holes"),
  /** Flats milled. */
  MILL_FLATS("mill flats"),
  /** Flats turned with a geared cutter. */
  POLYGON_TURN("turn polygon"),
  /** Slot milled. */
  MILL_SLOT("mill slot"),
  /** Form cut stroke by stroke. */
  SLOT("slot"),
  /** Text engraved. */
  ENGRAVE("engrave"),
  /** Burrs removed. */
  DEBURR("deburr"),
  /** Surface rolled smooth. */
  BURNISH("burnish"),
  /** Piece parted from the bar. */
  CUT_OFF("cut off");

  private final String words;

  OperationKind(String words) {
    this.words = words;
  }

  /** As a process sheet says it. */
  public String words() {
    return words;
  }
}
