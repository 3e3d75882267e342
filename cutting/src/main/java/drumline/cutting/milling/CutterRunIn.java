package drumline.cutting.milling;

import drumline.cutting.validity.Require;

/**
 * Way from first contact until a cutter cuts its whole engagement.
 *
 * <p>With the circumference: √(ae·(D − ae)); with the face, centred on a width B: (D − √(D² −
 * B²))/2.
 *
 * <p>Source: geometry; the first is used in [SHARMA] problem 4.17.
 */
public final class CutterRunIn {
  private CutterRunIn() {}

  /**
   * Run-in of a cutter that cuts with its circumference.
   *
   * @param cutterDiameterMm diameter D, above 0
   * @param engagementMm depth of cut ae towards the cutter's axis, 0 … D
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double circumferenceMm(double cutterDiameterMm, double engagementMm) {
    Require.positive("cutterDiameterMm", cutterDiameterMm);
    Require.between("engagementMm", engagementMm, 0, cutterDiameterMm);
    return Math.sqrt(engagementMm * (cutterDiameterMm - engagementMm));
  }

  /**
   * Run-in of a cutter that cuts with its face and is centred on the work.
   *
   * @param cutterDiameterMm diameter D, above 0
   * @param widthMm width B of the work, 0 … D
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double faceMm(double cutterDiameterMm, double widthMm) {
    Require.positive("cutterDiameterMm", cutterDiameterMm);
    Require.between("widthMm", widthMm, 0, cutterDiameterMm);
    double chord = Math.sqrt(cutterDiameterMm * cutterDiameterMm - widthMm * widthMm);
    return (cutterDiameterMm - chord) / 2;
  }
}
