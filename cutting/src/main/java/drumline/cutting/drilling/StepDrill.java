package drumline.cutting.drilling;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;
import java.util.ArrayList;
import java.util.List;

/**
 * Load of a step drill with all steps in cut: each step enlarges the hole of the one before.
 *
 * <p>Torque, thrust and power of all steps added, each by {@link HoleCut}.
 *
 * <p>Source: [BASIS] 2.2, opening out, derived. Its travel is that of {@code DrillPass} for the
 * depth of the last step plus the lengths of the steps before it.
 *
 * @param diametersMm diameters from the tip back, at least one, each above the one before
 * @param pointAngleDeg point angle of the tip, above 0 to 180
 * @param stepAngleDeg included angle of the steps, above 0 to 180
 * @param feedMmPerRev feed f, above 0
 * @param thrust form of the point
 */
public record StepDrill(
    List<Double> diametersMm,
    double pointAngleDeg,
    double stepAngleDeg,
    double feedMmPerRev,
    HoleCut.Thrust thrust) {
  /**
   * @throws IllegalArgumentException if there is no diameter, the diameters do not rise, or an
   *     angle or the feed is outside its range
   */
  public StepDrill {
    diametersMm = List.copyOf(diametersMm);
    Require.atLeast("number of diametersMm", diametersMm.size(), 1);
    double before = 0;
    for (double diameterMm : diametersMm) {
      Require.between("diametersMm", diameterMm, Math.nextUp(before), 1000);
      before = diameterMm;
    }
    Require.inside("pointAngleDeg", pointAngleDeg, 0, Math.nextUp(180.0));
    Require.inside("stepAngleDeg", stepAngleDeg, 0, Math.nextUp(180.0));
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** The steps as cuts of their own, tip first. */
  public List<HoleCut> steps() {
    List<HoleCut> steps = new ArrayList<>();
    double startMm = 0;
    double angleDeg = pointAngleDeg;
    for (double diameterMm : diametersMm) {
      steps.add(new HoleCut(diameterMm, startMm, 2, angleDeg / 2, feedMmPerRev, thrust));
      startMm = diameterMm;
      angleDeg = stepAngleDeg;
    }
    return List.copyOf(steps);
  }

  /**
   * Forces, torque and power with all steps in cut; chip thickness and specific force are the
   * tip's.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code DRILLING} for the crowded chip
   * @param speedRevPerMin speed between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double speedRevPerMin) {
    List<CuttingLoad> loads =
        steps().stream().map(s -> s.load(constants, corrections, speedRevPerMin)).toList();
    Validity notes =
        loads.stream().map(CuttingLoad::validity).reduce(Validity.inside(), Validity::and);
    return new CuttingLoad(
        loads.get(0).specificForceMpa(),
        loads.get(0).chipThicknessMm(),
        loads.stream().mapToDouble(CuttingLoad::mainForceN).sum(),
        loads.stream().mapToDouble(CuttingLoad::axialForceN).sum(),
        0,
        loads.stream().mapToDouble(CuttingLoad::torqueNm).sum(),
        loads.stream().mapToDouble(CuttingLoad::powerKw).sum(),
        notes);
  }
}
