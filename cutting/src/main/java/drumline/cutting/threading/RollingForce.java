package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Force that presses one roll of a radial head into the blank.
 *
 * <p>s = a/(Nw·z), c = √(2·s·R·r/(R + r)), F = k·Rm·l·c (N): each pass of a roll sinks by s,
 * touches over the length c, and presses with k times the tensile strength.
 *
 * <p>Source: contact of two cylinders, derived; the constraint k of about 3 is that of indentation,
 * from memory. An estimate for a slide's or head's load, good to about a half either way; strain
 * hardening and the head maker's figures go before it.
 *
 * @param rollDiameterMm diameter 2R of a roll, above 0
 * @param blankDiameterMm diameter 2r of the blank, above 0
 * @param depthMm depth a rolled in from one side, above 0 to r
 * @param workRevolutionsCount revolutions Nw of the work under the rolls, above 0
 * @param rollsCount rolls z around the work, at least 1
 * @param lengthMm length l of thread under the rolls, above 0
 */
public record RollingForce(
    double rollDiameterMm,
    double blankDiameterMm,
    double depthMm,
    double workRevolutionsCount,
    int rollsCount,
    double lengthMm) {

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public RollingForce {
    Require.positive("rollDiameterMm", rollDiameterMm);
    Require.positive("blankDiameterMm", blankDiameterMm);
    Require.positive("depthMm", depthMm);
    Require.between("depthMm", depthMm, 0, blankDiameterMm / 2);
    Require.positive("workRevolutionsCount", workRevolutionsCount);
    Require.atLeast("rollsCount", rollsCount, 1);
    Require.positive("lengthMm", lengthMm);
  }

  /** Depth s that one pass of a roll sinks. */
  public double perPassMm() {
    return depthMm / (workRevolutionsCount * rollsCount);
  }

  /** Length c over which roll and blank touch around the work. */
  public double contactMm() {
    double sum = rollDiameterMm + blankDiameterMm;
    return Math.sqrt(perPassMm() * rollDiameterMm * blankDiameterMm / sum);
  }

  /**
   * Force on one roll.
   *
   * @param strengthMpa tensile strength Rm, above 0
   * @param constraintRatio pressure to strength k, 1 … 6
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double forceN(double strengthMpa, double constraintRatio) {
    Require.positive("strengthMpa", strengthMpa);
    Require.between("constraintRatio", constraintRatio, 1, 6);
    return constraintRatio * strengthMpa * lengthMm * contactMm();
  }
}
