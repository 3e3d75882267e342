package drumline.shop.tooling;

/** Kinds of tools used on automatic lathes. */
public enum ToolKind {
  /** Outside turning and facing, rough. */
  TURNING_ROUGH,
  /** Outside turning and facing, finish. */
  TURNING_FINISH,
  /** Bar for boring, rough or finish. */
  BORING,
  /** Outside grooving. */
  GROOVING,
  /** Inside grooving. */
  INSIDE_GROOVING,
  /** Grooving of a face. */
  FACE_GROOVING,
  /** Form tool fed square to the axis. */
  FORM,
  /** Blade that parts the piece from the bar. */
  CUT_OFF,
  /** Spotting drill that also breaks the mouth. */
  SPOT_DRILL,
  /** Drill. */
  DRILL,
  /** Flat-bottomed drill or counterbore. */
  COUNTERBORE,
  /** Reamer. */
  REAMER,
  /** Cutting tap. */
  TAP,
  /** Forming tap. */
  FORM_TAP,
  /** Single-point thread tool. */
  THREADING,
  /** Thread-rolling head or attachment. */
  THREAD_ROLLING,
  /** Knurling tool. */
  KNURLING,
  /** End mill, driven. */
  END_MILL,
  /** Disc or face cutter for flats and slots, driven. */
  SIDE_CUTTER,
  /** Cutter for polygons, driven in ratio to the spindle. */
  POLYGON_CUTTER,
  /** Drill, driven, from the side or off centre. */
  DRIVEN_DRILL,
  /** Tap, driven, from the side or off centre. */
  DRIVEN_TAP,
  /** Slotting tool, not rotating, cuts by strokes. */
  SLOTTING,
  /** Engraving cutter, driven. */
  ENGRAVING,
  /** Deburring cutter or brush, driven. */
  DEBURRING,
  /** Roller burnisher. */
  BURNISHING
}
