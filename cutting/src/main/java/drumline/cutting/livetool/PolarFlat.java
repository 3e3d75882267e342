package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * A flat milled without a Y axis: the C axis turns while X follows, so that the contour is
 * straight.
 *
 * <p>n(x) = vf·d/(2π·(d² + x²)), highest at mid-flat: vf/(2π·d); peak angular acceleration
 * (3√3/8)·vf²/d². Where n would pass the C axis' limit nC the feed falls and the C axis runs at nC:
 * x*² = vf·d/(2π·nC) − d², t = 60·[2(w/2 − x*)/vf + atan(x/d)/(π·nC)].
 *
 * <p>Source: [BASIS] 2.7, derived. A line through the axis is impossible.
 *
 * @param distanceMm distance d of the tool path from the axis, above 0
 * @param pathMm length w of the straight path, centred on mid-flat, above 0
 * @param feedMmPerMin contour feed vf, above 0
 */
public record PolarFlat(double distanceMm, double pathMm, double feedMmPerMin) {
  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public PolarFlat {
    Require.positive("distanceMm", distanceMm);
    Require.positive("pathMm", pathMm);
    Require.positive("feedMmPerMin", feedMmPerMin);
  }

  /** Speed of the C axis at mid-flat, if the feed is kept. */
  public double peakRevPerMin() {
    return feedMmPerMin / (2 * Math.PI * distanceMm);
  }

  /** Highest angular acceleration of the C axis, if the feed is kept (path at least 2d/√3 long). */
  public double peakAccelerationRadPerS2() {
    double feedMmPerS = feedMmPerMin / 60;
    double rate = feedMmPerS / distanceMm;
    return 3 * Math.sqrt(3) / 8 * rate * rate;
  }

  /**
   * Smallest distance from the axis at which the feed can be kept.
   *
   * @param limitRevPerMin highest speed of the C axis, above 0
   * @throws IllegalArgumentException if the limit is not above 0
   */
  public double smallestDistanceMm(double limitRevPerMin) {
    Require.positive("limitRevPerMin", limitRevPerMin);
    return feedMmPerMin / (2 * Math.PI * limitRevPerMin);
  }

  /**
   * Time of the path, with less feed in the middle where the C axis is at its limit.
   *
   * @param limitRevPerMin highest speed nC of the C axis, above 0
   * @throws IllegalArgumentException if the limit is not above 0
   */
  public double timeS(double limitRevPerMin) {
    double half = pathMm / 2;
    double square = smallestDistanceMm(limitRevPerMin) * distanceMm - distanceMm * distanceMm;
    double slow = Math.min(half, Math.sqrt(Math.max(0, square)));
    double turns = Math.atan(slow / distanceMm) / Math.PI;
    return 60 * (2 * (half - slow) / feedMmPerMin + turns / limitRevPerMin);
  }
}
