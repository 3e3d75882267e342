package drumline.drawing.svg;

/** The pattern element of each kind of hatching. */
final class HatchPattern {

  private HatchPattern() {}

  /**
   * The definition.
   *
   * @param unit size of one unit of the patterns on the sheet: 1 on sheets in pixels, less in mm
   */
  static String svg(HatchKind kind, double unit) {
    return switch (kind) {
      case SECTION -> lines(kind, 45, 8 * unit, 0.7 * unit);
      case FINE_SECTION -> lines(kind, 45, 4.2 * unit, 0.55 * unit);
      case BAND -> lines(kind, 45, 6 * unit, unit);
      case RISING -> lines(kind, 45, 4 * unit, unit);
      case FALLING -> lines(kind, 135, 4 * unit, unit);
      case UPRIGHT -> lines(kind, 0, 3.5 * unit, unit);
      case LEVEL -> lines(kind, 90, 3.5 * unit, unit);
      case REMOVED -> lines(kind, 135, 3 * unit, 1.1 * unit);
      case KNURL_STRAIGHT -> lines(kind, 90, 5 * unit, 0.7 * unit);
      case CROSSED -> crossed(kind, 45, 4.5 * unit, 0.9 * unit);
      case KNURL_DIAMOND -> crossed(kind, 60, 6 * unit, 0.7 * unit);
      case GRID -> crossed(kind, 0, 4.5 * unit, 0.8 * unit);
      case DOTTED -> dots(kind, 4 * unit, 1.1 * unit);
      case SPARSE -> dots(kind, 5 * unit, 0.6 * unit);
      case WAVED -> waves(kind, 4 * unit, 0.9 * unit);
      case SOLID -> box(kind, 4 * unit, "");
    };
  }

  private static String lines(HatchKind kind, double turnDeg, double gap, double width) {
    return box(
        kind,
        gap,
        " patternTransform=\"rotate(" + SvgNumber.text(turnDeg) + ")\"",
        stroke("M" + n(gap / 2) + " 0V" + n(gap), width));
  }

  private static String crossed(HatchKind kind, double turnDeg, double gap, double width) {
    String half = n(gap / 2);
    String d =
        turnDeg == 60
            ? "M0 0L" + n(gap) + " " + half + "M0 " + half + "L" + n(gap) + " 0"
            : "M" + half + " 0V" + n(gap) + "M0 " + half + "H" + n(gap);
    String turn = turnDeg == 60 ? "0" : n(turnDeg);
    double height = turnDeg == 60 ? gap / 2 : gap;
    return open(kind, gap, height, " patternTransform=\"rotate(" + turn + ")\"")
        + stroke(d, width)
        + "</pattern>\n";
  }

  private static String dots(HatchKind kind, double gap, double radius) {
    String dot =
        "<circle class=\"hatch-dot\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
            .formatted(n(gap / 4), n(gap / 4), n(radius));
    String other =
        "<circle class=\"hatch-dot\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
            .formatted(n(gap * 3 / 4), n(gap * 3 / 4), n(radius));
    return box(kind, gap, "", dot + other);
  }

  private static String waves(HatchKind kind, double gap, double width) {
    String d =
        "M0 %s L%s %s L%s %s"
            .formatted(n(gap * 0.75), n(gap / 2), n(gap / 4), n(gap), n(gap * 0.75));
    return box(kind, gap, "", stroke(d, width));
  }

  private static String box(HatchKind kind, double gap, String turn, String content) {
    return open(kind, gap, gap, turn) + content + "</pattern>\n";
  }

  private static String box(HatchKind kind, double gap, String turn) {
    String solid = "<rect class=\"hatch-dot\" width=\"" + n(gap) + "\" height=\"" + n(gap) + "\"/>";
    return box(kind, gap, turn, solid);
  }

  private static String open(HatchKind kind, double width, double height, String turn) {
    return "<pattern id=\"%s%s\" class=\"hatch %s\" patternUnits=\"userSpaceOnUse\" width=\"%s\" height=\"%s\"%s>"
        .formatted(XmlText.PREFIX_MARK, kind.id(), kind.id(), n(width), n(height), turn);
  }

  private static String stroke(String d, double width) {
    return "<path class=\"hatch-line\" stroke-width=\"" + n(width) + "\" d=\"" + d + "\"/>";
  }

  private static String n(double value) {
    return SvgNumber.text(value);
  }
}
