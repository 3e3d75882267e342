package drumline.cutting.drilling;

import drumline.cutting.validity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Deep drilling with withdrawals to clear the chips.
 *
 * <p>T = 60·L/(f·n) + Σ over withdrawals of [60·2·zk/vr + 60·c/(f·n) + td] (s), zk the depth
 * reached; the last stroke's withdrawal belongs to the tool's retract and is not counted.
 *
 * <p>Source: [BASIS] 2.2, derived; first stroke 3–5·d, further ones 1–1.5·d in steel, one stroke to
 * 8–12·d with coolant through the drill: from memory.
 *
 * @param travelMm whole travel L at feed, from {@link DrillPass#travelMm()}, above 0
 * @param firstPeckMm first stroke, above 0
 * @param nextPeckMm each further stroke, above 0
 * @param clearanceMm distance c above the bottom at which rapid ends, 0 or more
 * @param feedMmPerRev feed f, above 0
 * @param rapidMmPerMin rapid speed vr, above 0
 * @param dwellS wait td outside the hole, 0 or more
 */
public record PeckCycle(
    double travelMm,
    double firstPeckMm,
    double nextPeckMm,
    double clearanceMm,
    double feedMmPerRev,
    double rapidMmPerMin,
    double dwellS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public PeckCycle {
    Require.positive("travelMm", travelMm);
    Require.positive("firstPeckMm", firstPeckMm);
    Require.positive("nextPeckMm", nextPeckMm);
    Require.notNegative("clearanceMm", clearanceMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("rapidMmPerMin", rapidMmPerMin);
    Require.notNegative("dwellS", dwellS);
  }

  /** Depths at which the drill is withdrawn, in order; empty when one stroke does. */
  public List<Double> withdrawalsMm() {
    List<Double> depths = new ArrayList<>();
    int strokes = 0;
    double depthMm = firstPeckMm;
    while (depthMm < travelMm - 1e-9) {
      depths.add(depthMm);
      strokes++;
      depthMm = firstPeckMm + strokes * nextPeckMm;
    }
    return List.copyOf(depths);
  }

  /**
   * Time to full depth, withdrawals included.
   *
   * @param speedRevPerMin speed n between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double feedMmPerS = feedMmPerRev * speedRevPerMin / 60;
    double timeS = travelMm / feedMmPerS;
    for (double depthMm : withdrawalsMm()) {
      timeS += 120 * depthMm / rapidMmPerMin + clearanceMm / feedMmPerS + dwellS;
    }
    return timeS;
  }
}
