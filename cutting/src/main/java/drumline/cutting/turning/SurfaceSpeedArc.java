package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * Turning an arc (radius, fillet, ball) at constant surface speed with speed clamps, feed along the
 * arc.
 *
 * <p>r(θ) = Rc + ρ·sin θ; t = 60·∫ ρ·dθ/(f·n(r)); between the clamps 60·2π·ρ·[Rc·Δθ + ρ·(cos θ1 −
 * cos θ2)]/(1000·vc·f) (s).
 *
 * <p>Source: [BASIS] section 3, derived; checked by numerical integration. An arc across the top of
 * a ring is two arcs that meet at θ = 90°.
 *
 * @param centreRadiusMm distance Rc of the arc's centre from the axis, 0 or more
 * @param arcRadiusMm radius ρ of the arc, above 0
 * @param fromDeg smaller angle θ1 against the axis' direction, −90 or more, with r(θ1) at least 0
 * @param toDeg larger angle θ2, above θ1 and up to 90
 * @param feedMmPerRev feed f along the arc, above 0
 */
public record SurfaceSpeedArc(
    double centreRadiusMm, double arcRadiusMm, double fromDeg, double toDeg, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SurfaceSpeedArc {
    Require.notNegative("centreRadiusMm", centreRadiusMm);
    Require.positive("arcRadiusMm", arcRadiusMm);
    Require.between("fromDeg", fromDeg, -90, 90);
    Require.between("toDeg", toDeg, Math.nextUp(fromDeg), 90);
    Require.positive("feedMmPerRev", feedMmPerRev);
    double smallest = centreRadiusMm + arcRadiusMm * Math.sin(Math.toRadians(fromDeg));
    Require.notNegative("smallest radius of the arc", smallest < -1e-9 ? smallest : 0);
  }

  /** Length of the arc. */
  public double lengthMm() {
    return arcRadiusMm * Math.toRadians(toDeg - fromDeg);
  }

  /**
   * Time, if the drive follows at once.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double lowestRadius =
        speed.clampRadiusMm() * speed.maxSpeedRevPerMin() / speed.minSpeedRevPerMin();
    double from = Math.toRadians(fromDeg);
    double to = Math.toRadians(toDeg);
    double fastEnd = held(angleAt(speed.clampRadiusMm()), from, to);
    double slowStart = held(angleAt(lowestRadius), fastEnd, to);
    double fast = arcRadiusMm * (fastEnd - from) / speed.maxSpeedRevPerMin();
    double slowMm = arcRadiusMm * (to - slowStart);
    double slow = slowMm > 0 ? slowMm / speed.minSpeedRevPerMin() : 0;
    double middle =
        2
            * Math.PI
            * arcRadiusMm
            * (centreRadiusMm * (slowStart - fastEnd)
                + arcRadiusMm * (Math.cos(fastEnd) - Math.cos(slowStart)))
            / (1000 * speed.speedMPerMin());
    return 60 * (fast + middle + slow) / feedMmPerRev;
  }

  private double angleAt(double radiusMm) {
    double sine = (radiusMm - centreRadiusMm) / arcRadiusMm;
    return Math.asin(Math.max(-1, Math.min(1, sine)));
  }

  private static double held(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
