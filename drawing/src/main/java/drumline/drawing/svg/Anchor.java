package drumline.drawing.svg;

import java.util.Locale;

/** Which point of a text stands at its place. */
public enum Anchor {
  /** Its begin. */
  START,
  /** Its middle. */
  MIDDLE,
  /** Its end. */
  END;

  String svg() {
    return name().toLowerCase(Locale.ROOT);
  }
}
