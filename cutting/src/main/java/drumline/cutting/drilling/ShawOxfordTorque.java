package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Second opinion on drilling torque, from hardness.
 *
 * <p>M = 0.087·25.4^0.4·H·f^0.8·d^1.8 (N·mm), H = 9.81·HB (N/mm²), web to diameter 0.18.
 *
 * <p>Source: Shaw and Oxford's relation, from memory. Its distance from {@link HoleCut} is the
 * honest uncertainty of either.
 */
public final class ShawOxfordTorque {
  private ShawOxfordTorque() {}

  /**
   * Torque of a twist drill into solid material.
   *
   * @param diameterMm diameter d, above 0
   * @param feedMmPerRev feed f, above 0
   * @param hardnessHb Brinell hardness HB, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double torqueNm(double diameterMm, double feedMmPerRev, double hardnessHb) {
    Require.positive("diameterMm", diameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("hardnessHb", hardnessHb);
    return 0.087
        * Math.pow(25.4, 0.4)
        * 9.81
        * hardnessHb
        * Math.pow(feedMmPerRev, 0.8)
        * Math.pow(diameterMm, 1.8)
        / 1000;
  }
}
