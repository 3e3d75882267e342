package drumline.cutting.finish;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Roughness that feed and nose radius leave in turning, and the feed for a wanted roughness.
 *
 * <p>Rt = f²/(8·r), Ra = f²/(32·r), each times a factor of reality; f = √(32·r·Ra/factor).
 *
 * <p>Source: [DANNY], ideal roughness of a round nose. Valid while f ≤ 2·r·sin κ′, κ′ the angle of
 * the secondary edge. Real Ra is 1.2–2 times this, up to 3 times in steel at low speed: from
 * memory.
 *
 * @param noseRadiusMm nose radius r, above 0
 * @param realityRatio factor by which the real surface is rougher, 1 … 3
 */
public record FeedMarkRoughness(double noseRadiusMm, double realityRatio) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public FeedMarkRoughness {
    Require.positive("noseRadiusMm", noseRadiusMm);
    Require.between("realityRatio", realityRatio, 1, 3);
  }

  /** The ideal surface, factor 1. */
  public static FeedMarkRoughness ideal(double noseRadiusMm) {
    return new FeedMarkRoughness(noseRadiusMm, 1);
  }

  /**
   * Peak-to-valley height Rt.
   *
   * @param feedMmPerRev feed f, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double rtUm(double feedMmPerRev) {
    Require.positive("feedMmPerRev", feedMmPerRev);
    return 1000 * realityRatio * feedMmPerRev * feedMmPerRev / (8 * noseRadiusMm);
  }

  /**
   * Mean roughness Ra.
   *
   * @param feedMmPerRev feed f, above 0
   * @throws IllegalArgumentException if the feed is not above 0
   */
  public double raUm(double feedMmPerRev) {
    return rtUm(feedMmPerRev) / 4;
  }

  /**
   * Feed that just gives a wanted Ra.
   *
   * @param raUm wanted Ra, above 0
   * @throws IllegalArgumentException if raUm is not above 0
   */
  public double feedMmPerRev(double raUm) {
    Require.positive("raUm", raUm);
    return Math.sqrt(32 * noseRadiusMm * raUm / 1000 / realityRatio);
  }

  /**
   * Feed that just gives a wanted peak-to-valley height.
   *
   * @param rtUm wanted Rt, above 0
   * @throws IllegalArgumentException if rtUm is not above 0
   */
  public double feedForRtMmPerRev(double rtUm) {
    Require.positive("rtUm", rtUm);
    return Math.sqrt(8 * noseRadiusMm * rtUm / 1000 / realityRatio);
  }

  /**
   * Whether only the round nose marks the surface at this feed.
   *
   * @param feedMmPerRev feed f, above 0
   * @param secondaryAngleDeg angle κ′ of the secondary edge, 0 … 90
   * @throws IllegalArgumentException if a value is outside its range
   */
  public Validity validity(double feedMmPerRev, double secondaryAngleDeg) {
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.between("secondaryAngleDeg", secondaryAngleDeg, 0, 90);
    double limit = 2 * noseRadiusMm * Math.sin(Math.toRadians(secondaryAngleDeg));
    return Validity.of(
        "feed", feedMmPerRev, 0, limit, "mm/rev", "the secondary edge marks the surface too");
  }
}
