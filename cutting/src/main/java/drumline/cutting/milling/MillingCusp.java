package drumline.cutting.milling;

import drumline.cutting.validity.Require;

/**
 * Height of the marks that a cutter's circumference leaves.
 *
 * <p>H = fz²/(4·D), which is vf²/(4·D·n²·z²) in slide feed.
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problem 4.25. The cutter's run-out,
 * which is usually larger, is left out.
 */
public final class MillingCusp {
  private MillingCusp() {}

  /**
   * Height of the marks.
   *
   * @param cutterDiameterMm diameter D, above 0
   * @param feedPerToothMm feed fz, 0 … D
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double heightUm(double cutterDiameterMm, double feedPerToothMm) {
    Require.positive("cutterDiameterMm", cutterDiameterMm);
    Require.between("feedPerToothMm", feedPerToothMm, 0, cutterDiameterMm);
    return 1000 * feedPerToothMm * feedPerToothMm / (4 * cutterDiameterMm);
  }
}
