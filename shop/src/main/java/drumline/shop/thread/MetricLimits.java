package drumline.shop.thread;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Limits of metric threads by class.
 *
 * <p>Basic sizes D2 = D − 0.649519 P and D1 = D − 1.082532 P are rounded to 0.001 mm ([ISO-724]),
 * then the fundamental deviation and the tolerances of the tables are applied.
 *
 * <p>Source: [ISO-965-1] 1998, tables 1 to 5, in {@code metric-crests.csv} and {@code
 * metric-pitch-diameters.csv}.
 */
final class MetricLimits {

  private static final FigureTable CRESTS =
      FigureTable.read(MetricLimits.class, "metric-crests.csv");
  private static final FigureTable PITCHES =
      FigureTable.read(MetricLimits.class, "metric-pitch-diameters.csv");

  private MetricLimits() {}

  static double pitchDiameterMm(double majorMm, double pitchMm) {
    return StandardRounding.halfUp(majorMm - 0.75 * height(pitchMm), 3);
  }

  static double minorMm(double majorMm, double pitchMm) {
    return StandardRounding.halfUp(majorMm - 1.25 * height(pitchMm), 3);
  }

  private static double height(double pitchMm) {
    return pitchMm * Math.sqrt(3) / 2;
  }

  static Optional<ExternalLimits> findExternal(
      double majorMm, double pitchMm, MetricClass metricClass) {
    OptionalDouble belowMm = deviationMm(pitchMm, metricClass.position());
    OptionalDouble crestMm = crestMm(pitchMm, "external", metricClass.crestGrade());
    OptionalDouble widthMm = widthMm(majorMm, pitchMm, "external", metricClass.pitchGrade());
    if (belowMm.isEmpty() || crestMm.isEmpty() || widthMm.isEmpty()) {
      return Optional.empty();
    }
    double majorMaxMm = majorMm - belowMm.getAsDouble();
    double pitchMaxMm = pitchDiameterMm(majorMm, pitchMm) - belowMm.getAsDouble();
    return Optional.of(
        new ExternalLimits(
            rounded(majorMaxMm),
            rounded(majorMaxMm - crestMm.getAsDouble()),
            rounded(pitchMaxMm),
            rounded(pitchMaxMm - widthMm.getAsDouble())));
  }

  static Optional<InternalLimits> findInternal(
      double majorMm, double pitchMm, MetricClass metricClass) {
    OptionalDouble aboveMm = deviationMm(pitchMm, metricClass.position());
    OptionalDouble crestMm = crestMm(pitchMm, "internal", metricClass.crestGrade());
    OptionalDouble widthMm = widthMm(majorMm, pitchMm, "internal", metricClass.pitchGrade());
    if (aboveMm.isEmpty() || crestMm.isEmpty() || widthMm.isEmpty()) {
      return Optional.empty();
    }
    double minorMinMm = minorMm(majorMm, pitchMm) + aboveMm.getAsDouble();
    double pitchMinMm = pitchDiameterMm(majorMm, pitchMm) + aboveMm.getAsDouble();
    return Optional.of(
        new InternalLimits(
            rounded(minorMinMm),
            rounded(minorMinMm + crestMm.getAsDouble()),
            rounded(pitchMinMm),
            rounded(pitchMinMm + widthMm.getAsDouble())));
  }

  /** Distance of the tolerance from the basic size, mm. */
  private static OptionalDouble deviationMm(double pitchMm, char position) {
    return switch (position) {
      case 'h', 'H' -> OptionalDouble.of(0);
      case 'g', 'G' -> crestFigureMm(pitchMm, "g_um");
      case 'f' -> crestFigureMm(pitchMm, "f_um");
      case 'e' -> crestFigureMm(pitchMm, "e_um");
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble crestMm(double pitchMm, String side, int grade) {
    return crestFigureMm(pitchMm, side + "_" + grade + "_um");
  }

  private static OptionalDouble crestFigureMm(double pitchMm, String column) {
    return CRESTS.rows().stream()
        .filter(row -> row.figure("pitch_mm") == pitchMm)
        .findFirst()
        .map(row -> inMm(row, column))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble widthMm(double majorMm, double pitchMm, String side, int grade) {
    return PITCHES.rows().stream()
        .filter(row -> majorMm > row.figure("over_mm") && majorMm <= row.figure("up_to_mm"))
        .filter(row -> row.figure("pitch_mm") == pitchMm)
        .findFirst()
        .map(row -> inMm(row, side + "_" + grade + "_um"))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble inMm(FigureTable.Row row, String column) {
    if (!row.cells().containsKey(column)) {
      return OptionalDouble.empty();
    }
    OptionalDouble um = row.findFigure(column);
    return um.isPresent() ? OptionalDouble.of(um.getAsDouble() / 1000) : um;
  }

  private static double rounded(double mm) {
    return StandardRounding.halfUp(mm, 3);
  }
}
