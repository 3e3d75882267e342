package drumline.cutting.finish;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Taking burrs off with a turning brush while the work turns under it.
 *
 * <p>t = 60·Nw/nw + ta (s); speed of the wire's tips vb = π·D·nb/1000 (m/min).
 *
 * <p>Source: kinematics; 5 to 30 revolutions of the work, tips at 600 to 2100 m/min and a
 * pressed-in depth of 1 to 3 mm from memory, common practice. Caution: wires break off and fly;
 * guards closed, and never above the brush maker's speed.
 *
 * @param brushDiameterMm diameter D of the brush, above 0
 * @param workRevolutionsCount revolutions Nw of the work under the brush, above 0
 * @param approachS time ta to come and go, 0 or more
 */
public record BrushDeburring(
    double brushDiameterMm, double workRevolutionsCount, double approachS) {

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public BrushDeburring {
    Require.positive("brushDiameterMm", brushDiameterMm);
    Require.positive("workRevolutionsCount", workRevolutionsCount);
    Require.notNegative("approachS", approachS);
  }

  /**
   * Time under the brush.
   *
   * @param workRevPerMin spindle speed nw, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double workRevPerMin) {
    Require.positive("workRevPerMin", workRevPerMin);
    return 60 * workRevolutionsCount / workRevPerMin + approachS;
  }

  /**
   * Speed of the wire's tips.
   *
   * @param brushRevPerMin speed nb of the brush, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double tipMPerMin(double brushRevPerMin) {
    Require.positive("brushRevPerMin", brushRevPerMin);
    return Math.PI * brushDiameterMm * brushRevPerMin / 1000;
  }

  /**
   * Whether the tips run in the usual range.
   *
   * @param brushRevPerMin speed nb of the brush, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public Validity validity(double brushRevPerMin) {
    return Validity.of(
        "speed of the brush's tips",
        tipMPerMin(brushRevPerMin),
        600,
        2100,
        "m/min",
        "slower leaves burrs, faster breaks wires");
  }
}
