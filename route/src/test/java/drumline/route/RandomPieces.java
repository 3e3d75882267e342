package drumline.route;

import java.util.Locale;
import java.util.Random;

/** Pieces of random steps, bores and features from bar of 26 mm, the same for the same seed. */
public final class RandomPieces {
  private static final String[] MATERIALS = {
    "11SMn30", "42CrMo4", "X5CrNi18-10", "CuZn39Pb3", "EN AW-6082", "Ti-6Al-4V"
  };
  private static final String[] GRADES = {"", " h8", " h9", " h11"};

  private RandomPieces() {}

  /** The piece of a seed. */
  public static Asked of(long seed) {
    Random random = new Random(seed);
    StringBuilder outside = new StringBuilder();
    double z = 0;
    int steps = 2 + random.nextInt(3);
    for (int i = 0; i < steps; i++) {
      z += 6 + random.nextInt(8);
      double diameter = 16 + random.nextInt(18) / 2.0;
      String edge = i == 0 && random.nextBoolean() ? ", edge: 0.5 mm x 45°" : "";
      outside.append(
          String.format(
              Locale.ROOT,
              "- {id: s%d, to: %.1f mm, diameter: %.1f mm%s%s}\n",
              i,
              z,
              diameter,
              GRADES[random.nextInt(GRADES.length)],
              edge));
    }
    String text =
        String.format(Locale.ROOT, "length: %.1f mm ±0.1\noutside:\n", z)
            + outside
            + bores(random, z)
            + features(random);
    return Asked.piece(text).in(MATERIALS[random.nextInt(MATERIALS.length)]);
  }

  private static String bores(Random random, double lengthMm) {
    String grade = random.nextBoolean() ? " H8" : " H11";
    return switch (random.nextInt(4)) {
      case 0 -> "";
      case 1 ->
          String.format(
              Locale.ROOT,
              "front-bore:\n- {id: b, depth: %.1f mm, diameter: 6 mm%s, bottom: through}\n",
              lengthMm,
              grade);
      case 2 ->
          """
          front-bore:
          - {id: b, depth: 5 mm, diameter: 9 mm H7, bottom: flat}
          - {id: c, depth: 9 mm, diameter: 5 mm, bottom: drill-point}
          """;
      default ->
          "back-bore:\n- {id: b, depth: 6 mm, diameter: 7 mm"
              + grade
              + ", edge: 0.5 mm x 45°, bottom: drill-point}\n";
    };
  }

  private static String features(Random random) {
    return switch (random.nextInt(4)) {
      case 0 ->
          "features:\n- {id: g, kind: groove, place: outside, at: 2 mm, width: 2 mm,"
              + " diameter: 14 mm}\n";
      case 1 ->
          "features:\n- {id: x, kind: cross-holes, at: 3 mm, angle: 0 deg, diameter: 2 mm,"
              + " depth: 3 mm}\n";
      case 2 ->
          "features:\n- {id: f, kind: flats, from: 0 mm, to: 4 mm, across: 14 mm h11,"
              + " count: 2}\n";
      default -> "";
    };
  }
}
