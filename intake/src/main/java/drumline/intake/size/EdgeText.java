package drumline.intake.size;

import drumline.intake.form.Field;
import drumline.intake.form.Range;
import drumline.shop.contour.Edge;
import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads an edge such as {@code 0.5 x 45°}, {@code R 0.4 mm}, {@code break} or {@code none}. */
public final class EdgeText {

  private static final String ALLOWED =
      "a chamfer such as \"0.5 mm x 45°\", a radius such as \"R 0.4 mm\", break or none";
  private static final Pattern CHAMFER =
      Pattern.compile("(.+?)\\s*[x×*]\\s*([\\d.]+)\\s*(?:°|º|deg)?", Pattern.CASE_INSENSITIVE);
  private static final Pattern RADIUS = Pattern.compile("[Rr]\\s*(.+)");
  private static final double RIGHT_ANGLE = 45;
  private static final Range SIZE = Range.above0To(100);

  private EdgeText() {}

  /** The edge; none, and reported, where it cannot be read. */
  public static Edge read(Field field) {
    String text = field.text();
    switch (text) {
      case "none" -> {
        return Edge.NONE;
      }
      case "break" -> {
        return new Edge(Edge.Kind.BREAK, 0, RIGHT_ANGLE);
      }
      default -> {}
    }
    Matcher chamfer = CHAMFER.matcher(text);
    if (chamfer.matches()) {
      return chamfer(field, chamfer.group(1), chamfer.group(2));
    }
    Matcher radius = RADIUS.matcher(text);
    if (radius.matches()) {
      OptionalDouble size = sizeMm(field, radius.group(1));
      return size.isPresent() ? new Edge(Edge.Kind.RADIUS, size.getAsDouble(), 45) : Edge.NONE;
    }
    field.report("edge-unknown", field.node().words(), ALLOWED, hint(text));
    return Edge.NONE;
  }

  private static Edge chamfer(Field field, String size, String angle) {
    OptionalDouble sizeMm = sizeMm(field, size);
    double angleDeg = angle.matches("\\d+(\\.\\d*)?|\\.\\d+") ? Double.parseDouble(angle) : 0;
    if (angleDeg < 1 || angleDeg > 89) {
      field.report("out-of-range", "the angle " + angle, "1 to 89 deg against the axis", "");
      return Edge.NONE;
    }
    return sizeMm.isPresent()
        ? new Edge(Edge.Kind.CHAMFER, sizeMm.getAsDouble(), angleDeg)
        : Edge.NONE;
  }

  private static OptionalDouble sizeMm(Field field, String text) {
    Parsed parsed = QuantityReader.read(text, QuantityKind.LENGTH, field.system());
    if (parsed instanceof Parsed.Value value && SIZE.holds(value.value())) {
      return OptionalDouble.of(value.value());
    }
    field.report("edge-unknown", field.node().words(), ALLOWED, "");
    return OptionalDouble.empty();
  }

  private static String hint(String text) {
    return text.matches("[\\d.]+\\s*(mm|in)?") ? "Maybe \"" + text + " x 45°\"." : "";
  }
}
