package drumline.route.rule;

import drumline.shop.material.IsoGroup;
import drumline.shop.operation.OperationKind;
import java.util.Locale;
import java.util.Optional;

/**
 * What one kind of operation reaches on a drum in good order.
 *
 * @param kind kind of operation
 * @param group main group of the material; empty for all without a row of their own
 * @param aboveMm diameters above this, in mm
 * @param toMm and up to this
 * @param gradeCount ISO 286 grade as a rule
 * @param careGradeCount grade with care, at most {@code gradeCount}
 * @param raUm roughness Ra as a rule, in µm
 * @param careRaUm roughness with care, at most {@code raUm}
 * @param source where it comes from
 */
public record Capability(
    OperationKind kind,
    Optional<IsoGroup> group,
    double aboveMm,
    double toMm,
    int gradeCount,
    int careGradeCount,
    double raUm,
    double careRaUm,
    String source) {
  /** Rounding of printed roughness: 125 µin is 3.175 µm and counts as 3.2. */
  private static final double ROUNDING_RATIO = 0.97;

  /** How well an operation reaches what a print asks for. */
  public enum Reach {
    /** As a rule. */
    USUAL,
    /** With care. */
    WITH_CARE,
    /** Not at all. */
    NOT
  }

  /**
   * Whether the operation reaches a grade and a roughness.
   *
   * @param grade grade asked for
   * @param roughnessUm Ra asked for, 0 if none
   */
  public Reach reach(int grade, double roughnessUm) {
    if (grade >= gradeCount && isSmooth(roughnessUm, raUm)) {
      return Reach.USUAL;
    }
    return grade >= careGradeCount && isSmooth(roughnessUm, careRaUm) ? Reach.WITH_CARE : Reach.NOT;
  }

  private static boolean isSmooth(double askedUm, double reachedUm) {
    return askedUm <= 0 || askedUm >= ROUNDING_RATIO * reachedUm;
  }

  /** As a study says it, e.g. {@code ream reaches IT 8 and Ra 1.6, with care IT 7 and Ra 0.4}. */
  public String words() {
    return String.format(
        Locale.ROOT,
        "%s reaches IT %d and Ra %s, with care IT %d and Ra %s",
        kind.words(),
        gradeCount,
        plain(raUm),
        careGradeCount,
        plain(careRaUm));
  }

  private static String plain(double value) {
    return String.valueOf(value).replaceFirst("\\.0$", "");
  }
}
