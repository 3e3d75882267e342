package drumline.cutting.clamping;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.validity.Require;
import java.util.Collection;

/**
 * Whether the work slips in its grip under torque and thrust together.
 *
 * <p>S = μ·F/√((2·M/d)² + Fa²); torque alone: M = μ·F·d/2; thrust alone: Fa = μ·F.
 *
 * <p>Source: [BASIS] section 6, derived (friction resists the resultant). Required S at least 1.5
 * by [VDI-3106]; 2 with a new chuck and 2.4 with an old one [RN1391] p. 46. Caution: work that
 * slips or is thrown injures; grip must be proven on the machine.
 *
 * @param gripN total radial grip F at speed, 0 (lifted) or more
 * @param frictionRatio friction μ between grip and work, above 0 to 1 (smooth on drawn bar
 *     0.10–0.15, serrated 0.2–0.4, brass and aluminium 0.08–0.12; from memory)
 * @param diameterMm gripped diameter d, above 0
 */
public record SlipSafety(double gripN, double frictionRatio, double diameterMm) {
  /**
   * What is resisted by the grip.
   *
   * @param torqueNm torque about the spindle axis, either sign
   * @param axialForceN force along the axis, either sign
   */
  public record Demand(double torqueNm, double axialForceN) {
    /**
     * @throws IllegalArgumentException if a value is not finite
     */
    public Demand {
      Require.notNegative("torqueNm, without its sign", Math.abs(torqueNm));
      Require.notNegative("axialForceN, without its sign", Math.abs(axialForceN));
    }

    /**
     * All cuts that run together on one spindle, their torques and axial forces added. Only loads
     * whose torque is at the work spindle belong here, not those of live tools.
     */
    public static Demand ofAll(Collection<CuttingLoad> loads) {
      double torqueNm = loads.stream().mapToDouble(CuttingLoad::torqueNm).sum();
      double axialForceN = loads.stream().mapToDouble(CuttingLoad::axialForceN).sum();
      return new Demand(torqueNm, axialForceN);
    }
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SlipSafety {
    Require.notNegative("gripN", gripN);
    Require.positive("frictionRatio", frictionRatio);
    Require.between("frictionRatio", frictionRatio, 0, 1);
    Require.positive("diameterMm", diameterMm);
  }

  /** Torque at which the work slips when nothing pushes. */
  public double torqueCapacityNm() {
    return frictionRatio * gripN * diameterMm / 2000;
  }

  /** Thrust at which the work slips when nothing turns it. */
  public double thrustCapacityN() {
    return frictionRatio * gripN;
  }

  /** Force along the grip that torque and thrust make together. */
  public double resultantN(Demand demand) {
    return Math.hypot(2000 * demand.torqueNm() / diameterMm, demand.axialForceN());
  }

  /** Safety S against slipping; infinite when nothing is asked. */
  public double safetyRatio(Demand demand) {
    return thrustCapacityN() / resultantN(demand);
  }

  /**
   * Grip that a wanted safety needs.
   *
   * @param demand torque and thrust together
   * @param wantedRatio safety S, at least 1
   * @throws IllegalArgumentException if the wanted safety is below 1
   */
  public double requiredGripN(Demand demand, double wantedRatio) {
    Require.between("wantedRatio", wantedRatio, 1, 100);
    return wantedRatio * resultantN(demand) / frictionRatio;
  }
}
