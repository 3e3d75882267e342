package drumline.drawing.wall;

import drumline.drawing.svg.HatchKind;
import drumline.shop.operation.OperationKind;

/** Ways of working, each with a pattern of its own. */
public enum KindPattern {
  /** What is turned. */
  TURNING("turning", HatchKind.RISING),
  /** What is bored. */
  BORING("boring", HatchKind.FALLING),
  /** What is drilled, reamed. */
  DRILLING("drilling, reaming", HatchKind.UPRIGHT),
  /** What is grooved or parted. */
  GROOVING("grooving, parting", HatchKind.LEVEL),
  /** Threads. */
  THREADING("threads", HatchKind.CROSSED),
  /** What is done with driven tools. */
  DRIVEN("driven tools", HatchKind.DOTTED),
  /** What is rolled, knurled, deburred. */
  FORMING("rolling, knurling, deburring", HatchKind.WAVED),
  /** What is cut stroke by stroke. */
  SLOTTING("slotting", HatchKind.GRID);

  private final String words;
  private final HatchKind hatch;

  KindPattern(String words, HatchKind hatch) {
    this.words = words;
    this.hatch = hatch;
  }

  /** As a legend names it. */
  public String words() {
    return words;
  }

  HatchKind hatch() {
    return hatch;
  }

  /** The way of working of an operation. */
  public static KindPattern of(OperationKind kind) {
    return switch (kind) {
      case FACE, ROUGH_TURN, FINISH_TURN, FORM_TURN -> TURNING;
      case ROUGH_BORE, FINISH_BORE -> BORING;
      case SPOT, DRILL, COUNTERBORE, REAM -> DRILLING;
      case GROOVE, INSIDE_GROOVE, FACE_GROOVE, CUT_OFF -> GROOVING;
      case TAP, FORM_TAP, THREAD_TURN, THREAD_ROLL -> THREADING;
      case CROSS_DRILL,
          CROSS_TAP,
          FACE_DRILL,
          FACE_TAP,
          MILL_FLATS,
          POLYGON_TURN,
          MILL_SLOT,
          ENGRAVE ->
          DRIVEN;
      case KNURL, DEBURR, BURNISH -> FORMING;
      case SLOT -> SLOTTING;
    };
  }
}
