package drumline.route;

import drumline.intake.InquiryReader;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.operation.Route;
import java.nio.file.Path;

/** Small inquiries for tests: round bar of 26 mm in free-cutting steel unless asked otherwise. */
public final class Asked {
  private static final String HEAD =
      """
      inquiry: {title: t, customer: c, number: n}
      units: metric
      volumes: {per-year: 100000, per-lot: 10000, years: 3}
      shifts: {per-day: 2, hours: 8 h, days-per-year: 240}
      rates: {currency: EUR, labour: 36 EUR/h, set-up: 90 EUR/h, scrap: 1 %}
      """;

  private String material = "11SMn30";
  private String bar = "{shape: round, size: 26 mm, tolerance: h9, length: 3 m}";
  private String wishes = "{machines: [drum-6x32]}";
  private String overrides = "{}";
  private String part = "";

  /** A piece, as the part block of an inquiry says it, without its name. */
  public static Asked piece(String text) {
    Asked asked = new Asked();
    asked.part = text;
    return asked;
  }

  /** In another material. */
  public Asked in(String name) {
    material = name;
    return this;
  }

  /** From another bar. */
  public Asked from(String text) {
    bar = text;
    return this;
  }

  /** With wishes of the user's own. */
  public Asked wishing(String text) {
    wishes = text;
    return this;
  }

  /** In a shop that does things otherwise. */
  public Asked overriding(String text) {
    overrides = text;
    return this;
  }

  /** The inquiry. */
  public Inquiry inquiry() {
    String text =
        HEAD
            + "material: "
            + material
            + "\nbar: "
            + bar
            + "\nwishes: "
            + wishes
            + "\noverrides: "
            + overrides
            + "\npart:\n"
            + "  name: piece\n  general-tolerances: ISO 2768-m\n  roughness: Ra 3.2\n"
            + "  front-face-roughness: Ra 3.2\n"
            + part.indent(2);
    ReadResult read = InquiryReader.readText(text, "test.yaml", Path.of(""), LibraryPaths.none());
    return read.inquiry()
        .orElseThrow(() -> new IllegalStateException(read.problems() + "\n" + text));
  }

  /** Its route. */
  public Route route() {
    return RouteDerivation.derive(inquiry());
  }

  /** Kinds of a route's operations in one line, in the order of work. */
  public static String line(Route route) {
    return String.join(", ", route.operations().stream().map(o -> o.kind().words()).toList());
  }
}
