package drumline.drawing.svg;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * One standalone SVG document: size, title, style and patterns around what a pen wrote.
 *
 * @param kind short name of the kind of drawing, part of every id
 * @param title what it is
 * @param description what it shows, in a sentence or two
 * @param width width in user units
 * @param height height in user units
 * @param unit user unit
 * @param look where it will be seen
 */
public record SvgSheet(
    String kind,
    String title,
    String description,
    double width,
    double height,
    Unit unit,
    Look look) {

  /** User units of a sheet. */
  public enum Unit {
    /** Millimetres on paper. */
    MM("mm", 0.32),
    /** Pixels. */
    PX("", 1);

    private final String suffix;
    private final double hatchUnit;

    Unit(String suffix, double hatchUnit) {
      this.suffix = suffix;
      this.hatchUnit = hatchUnit;
    }
  }

  /** The document. */
  public String svg(SvgPen pen) {
    String w = SvgNumber.text(width);
    String h = SvgNumber.text(height);
    String body = pen.body();
    String prefix = kind + "-" + checksum(title + body) + "-";
    StringBuilder out = new StringBuilder();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drumline ").append(kind);
    out.append("\" width=\"").append(w).append(unit.suffix);
    out.append("\" height=\"").append(h).append(unit.suffix);
    out.append("\" viewBox=\"0 0 ").append(w).append(' ').append(h);
    out.append("\" role=\"img\" aria-labelledby=\"").append(prefix).append("t\">\n");
    out.append("<title id=\"").append(prefix).append("t\">");
    out.append(XmlText.escape(title)).append("</title>\n");
    out.append("<desc>").append(XmlText.escape(description)).append("</desc>\n");
    if (look != Look.INSIDE) {
      out.append("<style>\n").append(StyleSheet.css(look)).append("\n</style>\n");
    }
    out.append("<defs>\n");
    for (HatchKind hatch : HatchKind.values()) {
      if (body.contains(SvgPen.fill(hatch))) {
        out.append(HatchPattern.svg(hatch, unit.hatchUnit));
      }
    }
    out.append("</defs>\n<rect class=\"paper\" width=\"").append(w);
    out.append("\" height=\"").append(h).append("\"/>\n").append(body).append("</svg>\n");
    return out.toString().replace(String.valueOf(XmlText.PREFIX_MARK), prefix);
  }

  private static String checksum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(crc.getValue());
  }
}
