package drumline.route.feature;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.tolerance.Tolerance;

/** What tolerance and roughness of a surface ask for. */
public final class Surface {
  private static final int COARSEST = 16;

  private Surface() {}

  /** Tolerance grade, counted from the width where the print gives no grade. */
  public static int grade(Tolerance tolerance, double nominalMm) {
    return tolerance
        .itGrade()
        .orElseGet(() -> tolerance.nearestItGrade(nominalMm).orElse(COARSEST));
  }

  /** Rule {@code finish-by-grade}: grade 9 or finer, or Ra 1.6 or finer. */
  public static boolean needsFinish(int grade, double roughnessRaUm) {
    return grade <= 9 || (roughnessRaUm > 0 && roughnessRaUm <= 1.6);
  }

  public static boolean needsFinish(OutsideStep step) {
    return step.isTaper()
        || needsFinish(grade(step.tolerance(), step.largestDiameterMm()), step.roughnessRaUm());
  }

  public static boolean needsFinish(BoreStep step) {
    return step.isTaper()
        || needsFinish(grade(step.tolerance(), step.largestDiameterMm()), step.roughnessRaUm());
  }
}
