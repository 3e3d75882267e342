package drumline.cutting.drilling;

import drumline.cutting.validity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * A deep hole divided over several positions, so that drilling no longer governs the cycle.
 *
 * <p>count ≥ ⌈t/ttarget⌉; equal shares of the travel, each later drill with its own approach.
 *
 * <p>Source: [BASIS] 2.2, derived; each following drill 0.1–0.2 mm smaller, or equal: from memory.
 */
public final class HoleSplit {
  private HoleSplit() {}

  /**
   * Least number of positions.
   *
   * @param wholeS time of the whole hole, above 0
   * @param targetS time allowed in one position, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static int positionsCount(double wholeS, double targetS) {
    Require.positive("wholeS", wholeS);
    Require.positive("targetS", targetS);
    return (int) Math.ceil(wholeS / targetS - 1e-9);
  }

  /**
   * Depths reached in each position, equal shares.
   *
   * @param depthMm whole depth, above 0
   * @param positionsCount positions, at least 1
   * @return depth after each position, first position first; the last is the whole depth
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static List<Double> depthsMm(double depthMm, int positionsCount) {
    Require.positive("depthMm", depthMm);
    Require.atLeast("positionsCount", positionsCount, 1);
    List<Double> depths = new ArrayList<>();
    for (int position = 1; position <= positionsCount; position++) {
      depths.add(depthMm * position / positionsCount);
    }
    return List.copyOf(depths);
  }
}
