package drumline.economics.triage;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The tightest demands of a print.
 *
 * <p>A tolerance without a grade gets the coarsest grade of ISO 286 that it is as wide as, by i =
 * 0.45·D^(1/3) + 0.001·D µm with D the geometric mean of the range of diameters, mm, up to 500 mm.
 * The standard rounds its table; 1.5 % of the width is allowed for that. Source: [ISO-286-1]
 * formula, from memory.
 */
final class Tightest {
  /** Widths of grades 5, 6, 7 … 14 in units i. */
  private static final int[] UNITS = {7, 10, 16, 25, 40, 64, 100, 160, 250, 400};

  private static final int FIRST_GRADE = 5;
  private static final double ROUNDING_RATIO = 0.985;

  /** Ends of the standard's ranges of diameters, mm. */
  private static final double[] RANGE_ENDS_MM = {
    1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500
  };

  private Tightest() {}

  private record Demand(String id, double value) {
    Measured measured() {
      return Measured.figure(value, id);
    }
  }

  static Optional<Measured> grade(Part part) {
    Stream<Demand> outside =
        turned(part).map(s -> new Demand(s.id(), grade(s.tolerance(), s.largestDiameterMm())));
    Stream<Demand> inside =
        bores(part).map(s -> new Demand(s.id(), grade(s.tolerance(), s.largestDiameterMm())));
    return least(Stream.concat(outside, inside));
  }

  static Optional<Measured> roughness(Part part) {
    Stream<Demand> outside = turned(part).map(s -> new Demand(s.id(), s.roughnessRaUm()));
    Stream<Demand> inside = bores(part).map(s -> new Demand(s.id(), s.roughnessRaUm()));
    return least(Stream.concat(outside, inside).filter(demand -> demand.value() > 0));
  }

  private static Stream<OutsideStep> turned(Part part) {
    return part.outside().stream().filter(s -> s.surface() == OutsideStep.Surface.TURNED);
  }

  private static Stream<BoreStep> bores(Part part) {
    return Stream.concat(part.frontBore().stream(), part.backBore().stream());
  }

  private static Optional<Measured> least(Stream<Demand> demands) {
    return demands.min(Comparator.comparingDouble(Demand::value)).map(Demand::measured);
  }

  private static double grade(Tolerance tolerance, double diameterMm) {
    if (tolerance.itGrade().isPresent()) {
      return tolerance.itGrade().getAsInt();
    }
    double meanMm = rangeMeanMm(diameterMm);
    double unitUm = 0.45 * Math.cbrt(meanMm) + 0.001 * meanMm;
    double widthUnits = 1000 * tolerance.widthMm() / unitUm;
    int grade = FIRST_GRADE - 1;
    for (int units : UNITS) {
      grade += units * ROUNDING_RATIO <= widthUnits ? 1 : 0;
    }
    return grade;
  }

  private static double rangeMeanMm(double diameterMm) {
    int end = 1;
    while (end < RANGE_ENDS_MM.length - 1 && diameterMm > RANGE_ENDS_MM[end]) {
      end++;
    }
    return Math.sqrt(RANGE_ENDS_MM[end - 1] * RANGE_ENDS_MM[end]);
  }
}
