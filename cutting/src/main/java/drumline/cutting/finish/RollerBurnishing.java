package drumline.cutting.finish;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Smoothing a turned seat or bore with rollers.
 *
 * <p>t = 60·(la + l + lo)/(f·n) (s), counted twice when the tool comes out at feed.
 *
 * <p>Source: [BASIS] 2.6; stock about the Rz before, 5–30 µm and at most 50 [YAMASA]; up to 45 HRC
 * and 0.05–0.3 mm/rev from memory.
 *
 * @param travelMm travel la + l + lo, above 0
 * @param feedMmPerRev feed f, above 0
 */
public record RollerBurnishing(double travelMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public RollerBurnishing {
    Require.positive("travelMm", travelMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /**
   * Time one way.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * travelMm / (feedMmPerRev * speedRevPerMin);
  }

  /**
   * Whether surface and hardness before burnishing are in the usual range.
   *
   * @param roughnessBeforeUm Rz before, above 0
   * @param hardnessHb Brinell hardness HB, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public Validity validity(double roughnessBeforeUm, double hardnessHb) {
    Require.positive("roughnessBeforeUm", roughnessBeforeUm);
    Require.positive("hardnessHb", hardnessHb);
    return Validity.of(
            "Rz before burnishing", roughnessBeforeUm, 5, 50, "µm", "the seat is not smoothed")
        .and(Validity.of("hardness", hardnessHb, 0, 420, "HB", "the metal does not flow"))
        .and(
            Validity.of(
                "feed", feedMmPerRev, 0.05, 0.3, "mm/rev", "the roller marks overlap badly"));
  }
}
