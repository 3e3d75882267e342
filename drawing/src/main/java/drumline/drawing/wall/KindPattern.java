package drumline.drawing.wall;

import drumline.drawing.svg.HatchKind;
import drumline.shop.operation.OperationKind;

/** Ways of working, each with a pattern of its own. */
enum KindPattern {
  TURNING("turning", HatchKind.RISING),
  BORING("boring", HatchKind.FALLING),
  DRILLING("drilling, reaming", HatchKind.UPRIGHT),
  GROOVING("grooving, parting", HatchKind.LEVEL),
  THREADING("threads", HatchKind.CROSSED),
  DRIVEN("driven tools", HatchKind.DOTTED),
  FORMING("rolling, knurling, deburring", HatchKind.WAVED),
  SLOTTING("slotting", HatchKind.GRID);

  private final String words;
  private final HatchKind hatch;

  KindPattern(String words, HatchKind hatch) {
    this.words = words;
    this.hatch = hatch;
  }

  String words() {
    return words;
  }

  HatchKind hatch() {
    return hatch;
  }

  static KindPattern of(OperationKind kind) {
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
