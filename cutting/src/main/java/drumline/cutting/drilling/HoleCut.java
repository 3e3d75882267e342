package drumline.cutting.drilling;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of a tool with several edges that makes or enlarges a hole: drill, core drill, counterbore,
 * reamer.
 *
 * <p>fz = f/z; h = fz·sin κ, κ = σ/2; M = kc·f·(d² − d0²)/8000 (N·m); Ff = cF·kc·(d − d0)·f·sin κ
 * (N); Fc of all edges = kc·f·(d − d0)/2.
 *
 * <p>Source: [BASIS] 2.2, after the lip force of [TSCH] Dietrich and Tschätsch, 11th edition;
 * thrust factor from memory. Two other published torque models differ by up to 45 % ([BASIS] 2.2).
 *
 * @param diameterMm diameter d, above 0
 * @param startDiameterMm diameter d0 of the hole already there, 0 to below d
 * @param edgesCount number z of edges, at least 1
 * @param edgeAngleDeg angle κ between edge and axis: half the point angle, 90 for a counterbore;
 *     above 0 to 90
 * @param feedMmPerRev feed f, above 0
 * @param thrust form of the point
 */
public record HoleCut(
    double diameterMm,
    double startDiameterMm,
    int edgesCount,
    double edgeAngleDeg,
    double feedMmPerRev,
    Thrust thrust) {
  /** How hard the point pushes. */
  public enum Thrust {
    /** Ordinary chisel point; also the safe side when a bar may be pushed back. */
    CHISEL_POINT(0.5),
    /** Self-centring point of carbide drills. */
    THINNED_POINT(0.25);

    private final double ratio;

    Thrust(double ratio) {
      this.ratio = ratio;
    }

    /** Factor cF. */
    public double ratio() {
      return ratio;
    }
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public HoleCut {
    Require.positive("diameterMm", diameterMm);
    Require.between("startDiameterMm", startDiameterMm, 0, diameterMm);
    Require.positive("diameterMm - startDiameterMm", diameterMm - startDiameterMm);
    Require.atLeast("edgesCount", edgesCount, 1);
    Require.positive("edgeAngleDeg", edgeAngleDeg);
    Require.between("edgeAngleDeg", edgeAngleDeg, 0, 90);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** A drill with two lips into solid material, on the safe side for thrust. */
  public static HoleCut drill(double diameterMm, double pointAngleDeg, double feedMmPerRev) {
    return new HoleCut(diameterMm, 0, 2, pointAngleDeg / 2, feedMmPerRev, Thrust.CHISEL_POINT);
  }

  /** Chip thickness h of one edge. */
  public double thicknessMm() {
    return feedMmPerRev / edgesCount * Math.sin(Math.toRadians(edgeAngleDeg));
  }

  /**
   * Forces, torque and power with the whole diameter in cut.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code DRILLING} for the crowded chip
   * @param speedRevPerMin speed between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, thicknessMm());
    double wallMm = diameterMm - startDiameterMm;
    double sine = Math.sin(Math.toRadians(edgeAngleDeg));
    double ring = diameterMm * diameterMm - startDiameterMm * startDiameterMm;
    double torqueNm = kcMpa * feedMmPerRev * ring / 8000;
    return new CuttingLoad(
        kcMpa,
        thicknessMm(),
        kcMpa * feedMmPerRev * wallMm / 2,
        thrust.ratio() * kcMpa * wallMm * feedMmPerRev * sine,
        0,
        torqueNm,
        CuttingPower.ofTorqueKw(torqueNm, speedRevPerMin),
        KienzleConstants.validity(thicknessMm()));
  }
}
