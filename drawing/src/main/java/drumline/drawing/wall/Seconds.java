package drumline.drawing.wall;

import java.util.Locale;

/** Times as the wall writes them: two decimals and the unit. */
final class Seconds {

  private Seconds() {}

  static String words(double valueS) {
    return String.format(Locale.ROOT, "%.2f s", valueS);
  }
}
