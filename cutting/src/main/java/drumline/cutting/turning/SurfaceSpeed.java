package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * Constant surface speed with its clamps: the spindle follows the diameter, but never beyond the
 * highest nor below the lowest speed.
 *
 * <p>n(r) = 1000·vc/(2π·r), held between nmin and nmax; clamp radius rc = 1000·vc/(2π·nmax).
 *
 * <p>Source: derived from the cutting speed; [BASIS] section 3. A clamp is required for safety: the
 * speed without it grows without limit towards the centre.
 *
 * @param speedMPerMin cutting speed vc, above 0
 * @param minSpeedRevPerMin lowest spindle speed, 0 … nmax
 * @param maxSpeedRevPerMin highest spindle speed nmax, above 0: the least of machine, collet, bar
 */
public record SurfaceSpeed(
    double speedMPerMin, double minSpeedRevPerMin, double maxSpeedRevPerMin) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SurfaceSpeed {
    Require.positive("speedMPerMin", speedMPerMin);
    Require.positive("maxSpeedRevPerMin", maxSpeedRevPerMin);
    Require.between("minSpeedRevPerMin", minSpeedRevPerMin, 0, maxSpeedRevPerMin);
  }

  /** A surface speed clamped only at the top. */
  public static SurfaceSpeed clampedAt(double speedMPerMin, double maxSpeedRevPerMin) {
    return new SurfaceSpeed(speedMPerMin, 0, maxSpeedRevPerMin);
  }

  /** Radius rc inside which the highest speed holds. */
  public double clampRadiusMm() {
    return 1000 * speedMPerMin / (2 * Math.PI * maxSpeedRevPerMin);
  }

  /**
   * Spindle speed at a radius.
   *
   * @param radiusMm radius r, 0 or more
   * @throws IllegalArgumentException if the radius is negative
   */
  public double revPerMin(double radiusMm) {
    Require.notNegative("radiusMm", radiusMm);
    double free = 1000 * speedMPerMin / (2 * Math.PI * radiusMm);
    return Math.max(minSpeedRevPerMin, Math.min(maxSpeedRevPerMin, free));
  }

  /**
   * Integral of dr/n(r) from the axis to a radius, in mm·min: the time of a unit feed along the
   * radius.
   *
   * @param radiusMm radius r, 0 or more
   * @throws IllegalArgumentException if the radius is negative
   */
  double radiusIntegralMmMin(double radiusMm) {
    Require.notNegative("radiusMm", radiusMm);
    double inner = Math.min(radiusMm, clampRadiusMm());
    double lowest = 1000 * speedMPerMin / (2 * Math.PI * minSpeedRevPerMin);
    double middle = Math.max(inner, Math.min(radiusMm, lowest));
    double outer = Math.max(0, radiusMm - middle);
    double slow = outer > 0 ? outer / minSpeedRevPerMin : 0;
    return inner / maxSpeedRevPerMin
        + Math.PI * (middle * middle - inner * inner) / (1000 * speedMPerMin)
        + slow;
  }
}
