package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;

/**
 * How far work or tool bends under a side force.
 *
 * <p>Clamped at one end, force at the free end: y = F·l³/(3·E·I). Propped at the far end, force at
 * mid-span: y = 7·F·l³/(768·E·I).
 *
 * <p>Source: beam theory (Euler and Bernoulli), standard cases; checked here by integrating the
 * bending moment. The spindle's, collet's and holder's own give is left out, so reality bends more.
 */
public final class BendingDeflection {
  private BendingDeflection() {}

  /**
   * Bending at the end of an overhang.
   *
   * @param forceN side force F, 0 or more
   * @param overhangMm length l from the grip, above 0
   * @param elasticityMpa Young's modulus E, above 0
   * @param section cross section
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double overhangMm(
      double forceN, double overhangMm, double elasticityMpa, BarSection section) {
    return factorMm(forceN, overhangMm, elasticityMpa, section) / 3;
  }

  /**
   * Bending at mid-span of work gripped at one end and supported at the other.
   *
   * @param forceN side force F, 0 or more
   * @param spanMm length l between grip and support, above 0
   * @param elasticityMpa Young's modulus E, above 0
   * @param section cross section
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double proppedMm(
      double forceN, double spanMm, double elasticityMpa, BarSection section) {
    return 7 * factorMm(forceN, spanMm, elasticityMpa, section) / 768;
  }

  private static double factorMm(
      double forceN, double lengthMm, double elasticityMpa, BarSection section) {
    Require.notNegative("forceN", forceN);
    Require.positive("length", lengthMm);
    Require.positive("elasticityMpa", elasticityMpa);
    return forceN * Math.pow(lengthMm, 3) / (elasticityMpa * section.inertiaMm4());
  }
}
