package drumline.cutting.parting;

import drumline.cutting.validity.Require;

/**
 * Plunges that a groove wider than the tool takes.
 *
 * <p>count = ⌈(W − w)/(w − o)⌉ + 1, o the overlap of two plunges.
 *
 * <p>Source: geometry.
 */
public final class GrooveWidening {
  private GrooveWidening() {}

  /**
   * Number of plunges side by side.
   *
   * @param grooveWidthMm width W of the groove, at least the tool's
   * @param toolWidthMm width w of the tool, above 0
   * @param overlapMm overlap o, 0 to below w
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static int plungesCount(double grooveWidthMm, double toolWidthMm, double overlapMm) {
    Require.positive("grooveWidthMm", grooveWidthMm);
    Require.positive("toolWidthMm", toolWidthMm);
    Require.between("toolWidthMm", toolWidthMm, 0, grooveWidthMm);
    Require.between("overlapMm", overlapMm, 0, Math.nextDown(toolWidthMm));
    double further = (grooveWidthMm - toolWidthMm) / (toolWidthMm - overlapMm);
    return (int) Math.ceil(further - 1e-9) + 1;
  }
}
