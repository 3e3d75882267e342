package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * One stroke of a drill from approach to depth.
 *
 * <p>Through: travel = la + l + A + lo. Blind: la + l + A where l is to the full diameter, la + l
 * where l is to the tip. t = 60·travel/(f·n) (s), n the speed between work and tool.
 *
 * <p>Source: [ALUM] (blind, to the tip) and [SHARMA] Sharma, Production Engineering, 11th edition,
 * problem 4.14 (through). Published answers differ by whether the point is counted; here the depth
 * says what it means.
 *
 * @param diameterMm diameter d, above 0
 * @param startDiameterMm diameter of a hole already there, 0 … d
 * @param pointAngleDeg point angle σ, above 0 to 180
 * @param depthMm length l, above 0
 * @param depthTo what l is measured to
 * @param approachMm approach la at feed, 0 or more
 * @param overrunMm overrun lo behind a through hole, 0 or more
 * @param feedMmPerRev feed f, above 0
 */
public record DrillPass(
    double diameterMm,
    double startDiameterMm,
    double pointAngleDeg,
    double depthMm,
    DepthTo depthTo,
    double approachMm,
    double overrunMm,
    double feedMmPerRev) {
  /** What a hole's depth is measured to. */
  public enum DepthTo {
    /** Blind, to where the full diameter ends; the point goes deeper. */
    FULL_DIAMETER,
    /** Blind, to the tip of the drill. */
    TIP,
    /** Through the work; the point must come out. */
    THROUGH
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public DrillPass {
    Require.positive("diameterMm", diameterMm);
    Require.between("startDiameterMm", startDiameterMm, 0, diameterMm);
    Require.positive("pointAngleDeg", pointAngleDeg);
    Require.between("pointAngleDeg", pointAngleDeg, 0, 180);
    Require.positive("depthMm", depthMm);
    Require.notNegative("approachMm", approachMm);
    Require.notNegative("overrunMm", overrunMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** A drill into solid material. */
  public static DrillPass solid(
      double diameterMm,
      double pointAngleDeg,
      double depthMm,
      DepthTo depthTo,
      double approachMm,
      double feedMmPerRev) {
    return new DrillPass(
        diameterMm, 0, pointAngleDeg, depthMm, depthTo, approachMm, 0, feedMmPerRev);
  }

  /** Travel at feed. */
  public double travelMm() {
    double pointMm = DrillPoint.lengthMm(diameterMm, startDiameterMm, pointAngleDeg);
    return switch (depthTo) {
      case TIP -> approachMm + depthMm;
      case FULL_DIAMETER -> approachMm + depthMm + pointMm;
      case THROUGH -> approachMm + depthMm + pointMm + overrunMm;
    };
  }

  /** Revolutions that the stroke takes, whatever the speed. */
  public double revolutionsCount() {
    return travelMm() / feedMmPerRev;
  }

  /**
   * Time of the stroke.
   *
   * @param speedRevPerMin speed n between work and tool, above 0, see {@link RelativeSpeed}
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }

  /**
   * Removal rate when the full diameter cuts: π/4·(d² − d0²)·f·n/60 (mm³/s).
   *
   * @param speedRevPerMin speed n between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double removalMm3PerS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double areaMm2 = Math.PI / 4 * (diameterMm * diameterMm - startDiameterMm * startDiameterMm);
    return areaMm2 * feedMmPerRev * speedRevPerMin / 60;
  }
}
