package drumline.drawing.svg;

/** The style of all drawings, for a page that shows several of them. */
public final class DrawingStyle {
  private DrawingStyle() {}

  /** The style sheet; colours are variables with a light, a dark and a print set. */
  public static String css() {
    return StyleSheet.css(Look.SCREEN);
  }
}
