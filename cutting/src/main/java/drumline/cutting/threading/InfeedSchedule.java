package drumline.cutting.threading;

import drumline.cutting.validity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Depth of a chased thread after each pass.
 *
 * <p>Equal chip area: ak = h·√(k/N). Eased first pass: ak = h·√(φk/(N − 1)), φ = 0.3, 1, 2 … N − 1.
 * Equal depth: ak = h·k/N.
 *
 * <p>Source: [BASIS] 2.5 (equal area, derived from a chip section that grows with the square of the
 * depth); [THRMAN] p. 114 for the second.
 */
public final class InfeedSchedule {
  private InfeedSchedule() {}

  /**
   * Depths for the same chip area in each pass.
   *
   * @param depthMm full depth h, above 0
   * @param passesCount number N of passes, at least 1
   * @return depth after each pass, first pass first; the last is h
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static List<Double> equalAreaMm(double depthMm, int passesCount) {
    Require.positive("depthMm", depthMm);
    Require.atLeast("passesCount", passesCount, 1);
    List<Double> depths = new ArrayList<>();
    for (int pass = 1; pass <= passesCount; pass++) {
      depths.add(depthMm * Math.sqrt((double) pass / passesCount));
    }
    return List.copyOf(depths);
  }

  /**
   * Depths with an eased first pass.
   *
   * @param depthMm full depth h, above 0
   * @param passesCount number N of passes, at least 2
   * @return depth after each pass, first pass first; the last is h
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static List<Double> easedFirstMm(double depthMm, int passesCount) {
    Require.positive("depthMm", depthMm);
    Require.atLeast("passesCount", passesCount, 2);
    List<Double> depths = new ArrayList<>();
    for (int pass = 1; pass <= passesCount; pass++) {
      double phi = pass == 1 ? 0.3 : pass - 1;
      depths.add(depthMm * Math.sqrt(phi / (passesCount - 1)));
    }
    return List.copyOf(depths);
  }

  /**
   * Depths with the same infeed in each pass.
   *
   * @param depthMm full depth h, above 0
   * @param passesCount number N of passes, at least 1
   * @return depth after each pass, first pass first; the last is h
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static List<Double> equalDepthMm(double depthMm, int passesCount) {
    Require.positive("depthMm", depthMm);
    Require.atLeast("passesCount", passesCount, 1);
    List<Double> depths = new ArrayList<>();
    for (int pass = 1; pass <= passesCount; pass++) {
      depths.add(depthMm * pass / passesCount);
    }
    return List.copyOf(depths);
  }
}
