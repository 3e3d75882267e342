package drumline.drawing.svg;

/** Writes SVG elements one after the other; text and attributes are escaped. */
public final class SvgPen {

  private final StringBuilder out = new StringBuilder();

  /** Opens a group; attributes are names and values in turn. */
  public SvgPen open(String classes, String... attributes) {
    start("g", classes);
    attributes(attributes);
    out.append(">\n");
    return this;
  }

  /** Closes the group opened last. */
  public SvgPen close() {
    out.append("</g>\n");
    return this;
  }

  /** Says what the open group is, for pointers and screen readers. */
  public SvgPen title(String text) {
    out.append("<title>").append(XmlText.escape(text)).append("</title>\n");
    return this;
  }

  /** A straight line. */
  public SvgPen line(String classes, double x1, double y1, double x2, double y2) {
    start("line", classes);
    number("x1", x1).number("y1", y1).number("x2", x2).number("y2", y2);
    out.append("/>\n");
    return this;
  }

  /** A rectangle; attributes are names and values in turn. */
  public SvgPen rect(String classes, Box box, String... attributes) {
    start("rect", classes);
    number("x", box.x()).number("y", box.y());
    number("width", box.width()).number("height", box.height());
    attributes(attributes);
    out.append("/>\n");
    return this;
  }

  /** A circle. */
  public SvgPen circle(String classes, double x, double y, double radius) {
    start("circle", classes);
    number("cx", x).number("cy", y).number("r", radius);
    out.append("/>\n");
    return this;
  }

  /** A path; attributes are names and values in turn. */
  public SvgPen path(String classes, SvgPath path, String... attributes) {
    if (!path.isEmpty()) {
      start("path", classes);
      attributes(attributes);
      out.append(" d=\"").append(path).append("\"/>\n");
    }
    return this;
  }

  /** A line of text with its baseline at y; attributes are names and values in turn. */
  public SvgPen text(
      String classes,
      double x,
      double y,
      double size,
      Anchor anchor,
      String text,
      String... attributes) {
    start("text", classes);
    number("x", x).number("y", y).number("font-size", size);
    attributes("text-anchor", anchor.svg());
    attributes(attributes);
    out.append('>').append(XmlText.escape(text)).append("</text>\n");
    return this;
  }

  /** A line of text that runs upwards, its baseline on the vertical through x. */
  public SvgPen upText(
      String classes,
      double x,
      double y,
      double size,
      Anchor anchor,
      String text,
      String... attributes) {
    String at = SvgNumber.text(x) + " " + SvgNumber.text(y);
    String[] all = new String[attributes.length + 2];
    all[0] = "transform";
    all[1] = "rotate(-90 " + at + ")";
    System.arraycopy(attributes, 0, all, 2, attributes.length);
    return text(classes, x, y, size, anchor, text, all);
  }

  /** What a {@code fill} must say to use one of the sheet's patterns. */
  public static String fill(HatchKind pattern) {
    return "url(#" + XmlText.PREFIX_MARK + pattern.id() + ")";
  }

  String body() {
    return out.toString();
  }

  private void start(String element, String classes) {
    out.append('<').append(element);
    if (!classes.isEmpty()) {
      out.append(" class=\"").append(XmlText.escape(classes)).append('"');
    }
  }

  private SvgPen number(String name, double value) {
    out.append(' ').append(name).append("=\"").append(SvgNumber.text(value)).append('"');
    return this;
  }

  private void attributes(String... attributes) {
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      String value = attributes[i + 1];
      boolean isFill = value.startsWith("url(#" + XmlText.PREFIX_MARK);
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(isFill ? value : XmlText.escape(value)).append('"');
    }
  }
}
