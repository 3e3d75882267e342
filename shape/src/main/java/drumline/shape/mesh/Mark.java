package drumline.shape.mesh;

/** What a stretch of the piece's surface is. */
public enum Mark {
  /** Turned outside and faces. */
  TURNED,
  /** Bores, inside grooves. */
  BORED,
  /** The bar's own surface. */
  BAR,
  /** Flats, slots, inside forms. */
  MILLED,
  /** Cross holes and face holes. */
  DRILLED,
  /** A thread, drawn as its smooth cylinder. */
  THREAD,
  /** A knurl, drawn smooth. */
  KNURL
}
