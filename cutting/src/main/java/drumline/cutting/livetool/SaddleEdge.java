package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * Edge where a cross hole meets the outside or the bore of the work: a saddle, longer than the
 * hole's circumference; the path of a deburring tool.
 *
 * <p>L = ∫ √(r² + h′(θ)²) dθ over a turn, h = √(R² − r²·cos² θ), h′ = r²·sin θ·cos θ/h; height of
 * the saddle = R − √(R² − r²).
 *
 * <p>Source: geometry of two cylinders whose axes cross; summed over 720 chords' midpoints, which
 * is exact to better than 1e-9 while r is below 0.95·R.
 *
 * @param workDiameterMm diameter 2R of the work or of its bore, above 0
 * @param holeDiameterMm diameter 2r of the hole, above 0 to below 2R
 */
public record SaddleEdge(double workDiameterMm, double holeDiameterMm) {
  private static final int CHORDS = 720;

  /**
   * @throws IllegalArgumentException if a diameter is outside its range
   */
  public SaddleEdge {
    Require.positive("workDiameterMm", workDiameterMm);
    Require.inside("holeDiameterMm", holeDiameterMm, 0, workDiameterMm);
  }

  /** Length L of the edge, once around. */
  public double lengthMm() {
    double outer = workDiameterMm / 2;
    double hole = holeDiameterMm / 2;
    double step = 2 * Math.PI / CHORDS;
    double length = 0;
    for (int i = 0; i < CHORDS; i++) {
      double angle = (i + 0.5) * step;
      double side = hole * Math.cos(angle);
      double height = Math.sqrt(outer * outer - side * side);
      double slope = hole * Math.sin(angle) * side / height;
      length += Math.hypot(hole, slope) * step;
    }
    return length;
  }

  /** Height between the edge's highest and lowest point. */
  public double heightMm() {
    double outer = workDiameterMm / 2;
    double hole = holeDiameterMm / 2;
    return outer - Math.sqrt(outer * outer - hole * hole);
  }

  /**
   * The path of a tool once around.
   *
   * @param plungeS time to plunge and lift, 0 or more
   * @param holdS time to orient, clamp and unclamp the spindle, 0 or more
   */
  public ContourPass pass(double plungeS, double holdS) {
    return new ContourPass(lengthMm(), 1, plungeS, holdS);
  }
}
