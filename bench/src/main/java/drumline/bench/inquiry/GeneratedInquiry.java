package drumline.bench.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Inquiries drawn at random: stepped pieces with a bore, grooves, threads, cross holes and flats.
 * The same seed gives the same text.
 */
public final class GeneratedInquiry {
  private static final String[] MATERIALS = {"11SMn30", "X8CrNiS18-9", "CuZn39Pb3", "C45"};

  private static final int MOST_STEPS = 8;

  private final Random random;
  private final int stepCount;
  private final List<String> outside = new ArrayList<>();
  private final List<String> features = new ArrayList<>();

  private GeneratedInquiry(int seed, int stepCount) {
    random = new Random(seed);
    this.stepCount = stepCount;
  }

  /**
   * The inquiry's text.
   *
   * @param stepCount outside steps, 2 to 8
   * @throws IllegalArgumentException if the stepCount is outside 2 to 8
   */
  public static String text(int seed, int stepCount) {
    if (stepCount < 2 || stepCount > MOST_STEPS) {
      throw new IllegalArgumentException("stepCount is " + stepCount + ", allowed: 2 to 8");
    }
    return new GeneratedInquiry(seed, stepCount).text();
  }

  private String text() {
    double lengthMm = outsideSteps();
    double boreMm = 5 + random.nextInt(4);
    double depthMm = Math.floor(lengthMm * (0.3 + 0.3 * random.nextDouble()));
    String bore =
        String.format(
            Locale.ROOT,
            "    - {id: bore, depth: %.0f mm, diameter: %.1f mm %s, bottom: drill-point}%n",
            depthMm,
            boreMm,
            random.nextBoolean() ? "H8" : "H11");
    return "inquiry: {title: Generated piece, customer: none (generated), number: G-1}\n"
        + "units: metric\n"
        + "material: "
        + MATERIALS[random.nextInt(MATERIALS.length)]
        + "\nbar: {shape: round, size: 26 mm, tolerance: h9, length: 3 m}\n"
        + "volumes: {per-year: 300 000, per-lot: 30 000, years: 4}\n"
        + "shifts: {per-day: 2, hours: 8 h, days-per-year: 235}\n"
        + "rates: {currency: EUR, labour: 36 EUR/h, set-up: 90 EUR/h, scrap: 1 %}\n"
        + "part:\n  name: generated\n  length: "
        + String.format(Locale.ROOT, "%.0f mm ±0.1%n", lengthMm)
        + "  general-tolerances: ISO 2768-m\n  roughness: Ra 3.2\n  outside:\n"
        + String.join("", outside)
        + "  front-bore:\n"
        + bore
        + (features.isEmpty() ? "" : "  features:\n" + String.join("", features))
        + "wishes: {machines: [drum-8x26]}\n";
  }

  /** Steps that grow to the collar and fall behind it, each with a feature now and then. */
  private double outsideSteps() {
    double atMm = 0;
    int collar = stepCount / 2;
    for (int i = 0; i < stepCount; i++) {
      double longMm = 6 + random.nextInt(4);
      double diameterMm = i <= collar ? 14 + 10.0 * i / collar : 24 - 2.0 * (i - collar);
      String tolerance = new String[] {"h9", "h11", "h8", ""}[random.nextInt(4)];
      outside.add(
          String.format(
              Locale.ROOT,
              "    - {id: step%d, to: %.0f mm, diameter: %.1f mm %s, edge: break%s}%n",
              i,
              atMm + longMm,
              diameterMm,
              tolerance,
              i + 1 == stepCount ? ", back-edge: 0.5 mm x 45°" : ""));
      feature(i, atMm, longMm, diameterMm);
      if (stepCount == MOST_STEPS) {
        cleanedHole(i, atMm + longMm / 3);
      }
      atMm += longMm;
    }
    return atMm;
  }

  /** A cross hole at an angle of its own, deburred. */
  private void cleanedHole(int step, double atMm) {
    features.add(
        String.format(
            Locale.ROOT,
            "    - {id: port%d, kind: cross-holes, at: %.1f mm, angle: 45 deg, diameter: 2 mm,"
                + " depth: 3 mm}%n    - {id: clean%d, kind: deburring, of: port%d, method:"
                + " chamfer}%n",
            step,
            atMm,
            step,
            step));
  }

  private void feature(int step, double atMm, double longMm, double diameterMm) {
    double middleMm = atMm + longMm / 2;
    switch (random.nextInt(5)) {
      case 0 ->
          features.add(
              String.format(
                  Locale.ROOT,
                  "    - {id: groove%d, kind: groove, place: outside, at: %.1f mm, width: 2 mm,"
                      + " diameter: %.1f mm}%n",
                  step,
                  middleMm - 1,
                  diameterMm - 2));
      case 1, 2 ->
          features.add(
              String.format(
                  Locale.ROOT,
                  "    - {id: hole%d, kind: cross-holes, at: %.1f mm, angle: %d deg, diameter: 2.5"
                      + " mm, depth: 3 mm}%n",
                  step,
                  middleMm,
                  90 * random.nextInt(4)));
      case 3 ->
          features.add(
              String.format(
                  Locale.ROOT,
                  "    - {id: mark%d, kind: engraving, text: A%d, place: outside, at: %.1f mm,"
                      + " height: 2 mm, depth: 0.15 mm}%n",
                  step,
                  step,
                  middleMm));
      default -> {
        // a plain step
      }
    }
  }
}
