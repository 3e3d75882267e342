package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * Facing or cut-off at constant surface speed with a drive that cannot follow near the axis.
 *
 * <p>Wanted acceleration at r: f·n²/r, n in 1/s. From the radius rα = (f·V²/(4π²·α))^(1/3), V in
 * mm/s, the spindle gains only α until the highest speed: rs − r = f·(ns·τ + α·τ²/2).
 *
 * <p>Source: [BASIS] section 3, derived; checked against a step-by-step twin. Without clamps on the
 * lag's way the drive never catches up, since the wanted acceleration keeps growing inwards. Facing
 * outwards takes as long when the drive brakes as it drives.
 *
 * @param facing radii and feed
 * @param accelerationRevPerMinPerS acceleration α of the spindle, above 0
 */
public record AcceleratedFacing(SurfaceSpeedFacing facing, double accelerationRevPerMinPerS) {
  /**
   * @throws IllegalArgumentException if the acceleration is not above 0
   */
  public AcceleratedFacing {
    Require.positive("accelerationRevPerMinPerS", accelerationRevPerMinPerS);
  }

  /**
   * Acceleration that constant surface speed wants at a radius.
   *
   * @param speed surface speed with clamps
   * @param radiusMm radius r, above 0
   * @throws IllegalArgumentException if the radius is not above 0
   */
  public double wantedRevPerMinPerS(SurfaceSpeed speed, double radiusMm) {
    Require.positive("radiusMm", radiusMm);
    double n = speed.revPerMin(radiusMm) / 60;
    return 60 * facing.feedMmPerRev() * n * n / radiusMm;
  }

  /**
   * Radius at which the spindle begins to lag; the inner radius if it does not.
   *
   * @param speed surface speed with clamps
   */
  public double lagRadiusMm(SurfaceSpeed speed) {
    double mmPerS = 1000 * speed.speedMPerMin() / 60;
    double alpha = accelerationRevPerMinPerS / 60;
    double balance =
        Math.cbrt(facing.feedMmPerRev() * mmPerS * mmPerS / (4 * Math.PI * Math.PI * alpha));
    double lowest = speed.clampRadiusMm() * speed.maxSpeedRevPerMin() / speed.minSpeedRevPerMin();
    double lag = Math.min(Math.min(balance, lowest), facing.outerRadiusMm());
    boolean lags = lag > speed.clampRadiusMm() && lag > facing.innerRadiusMm();
    return lags ? lag : facing.innerRadiusMm();
  }

  /**
   * Time with the lag; the spindle is at its speed when the cut begins.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double lagMm = lagRadiusMm(speed);
    double feed = facing.feedMmPerRev();
    double followedS =
        lagMm == facing.innerRadiusMm()
            ? facing.timeS(speed)
            : new SurfaceSpeedFacing(facing.outerRadiusMm(), lagMm, feed).timeS(speed);
    double travelMm = lagMm - facing.innerRadiusMm();
    double revs = travelMm / feed;
    double start = speed.revPerMin(lagMm) / 60;
    double top = speed.maxSpeedRevPerMin() / 60;
    double alpha = accelerationRevPerMinPerS / 60;
    double rampS = (top - start) / alpha;
    double rampRevs = (start + top) / 2 * rampS;
    double lagS =
        revs <= rampRevs
            ? (Math.sqrt(start * start + 2 * alpha * revs) - start) / alpha
            : rampS + (revs - rampRevs) / top;
    return followedS + lagS;
  }
}
