package drumline.shop.thread;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tolerance class of a metric thread, such as 6g, 6H or 5g6g.
 *
 * @param position letter of the fundamental deviation: e f g h for external, G H for internal
 * @param pitchGrade grade of the pitch diameter
 * @param crestGrade grade of the crest diameter
 */
record MetricClass(char position, int pitchGrade, int crestGrade) {

  private static final Pattern ONE = Pattern.compile("([3-9])([efghGH])(?:([3-9])([efghGH]))?");

  static Optional<MetricClass> find(String text) {
    Matcher matcher = ONE.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    char position = matcher.group(2).charAt(0);
    int pitchGrade = Integer.parseInt(matcher.group(1));
    if (matcher.group(3) == null) {
      return Optional.of(new MetricClass(position, pitchGrade, pitchGrade));
    }
    boolean samePosition = matcher.group(4).charAt(0) == position;
    int crestGrade = Integer.parseInt(matcher.group(3));
    return samePosition
        ? Optional.of(new MetricClass(position, pitchGrade, crestGrade))
        : Optional.empty();
  }

  boolean isInternal() {
    return position == 'G' || position == 'H';
  }

  String text() {
    String pitch = "" + pitchGrade + position;
    return pitchGrade == crestGrade ? pitch : pitch + crestGrade + position;
  }
}
