package drumline.cutting.slotting;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of a slotting stroke.
 *
 * <p>F = kc(h = ap)·K·width·ap along the axis: it pushes the bar into the collet. Radial force
 * rp·F.
 *
 * <p>Source: [BASIS] 2.8, after the cutting force of [TSCH] Dietrich and Tschätsch, 11th edition.
 * The spindle's clamp is checked with M = F·r, the safe side: only the sideways part of F turns it.
 *
 * @param widthMm width of the edge, above 0
 * @param infeedMm infeed ap for each stroke, above 0
 * @param radiusMm distance r of the edge from the axis, 0 or more
 * @param passiveForceRatio rp, 0 … 2
 */
public record SlottingCut(
    double widthMm, double infeedMm, double radiusMm, double passiveForceRatio) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SlottingCut {
    Require.positive("widthMm", widthMm);
    Require.positive("infeedMm", infeedMm);
    Require.notNegative("radiusMm", radiusMm);
    Require.between("passiveForceRatio", passiveForceRatio, 0, 2);
  }

  /**
   * Forces, torque to be held by the spindle's clamp, and power at the slide.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code SLOTTING} for the crowded chip
   * @param cutMPerMin cutting speed, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double cutMPerMin) {
    Require.positive("cutMPerMin", cutMPerMin);
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, infeedMm);
    double forceN = kcMpa * widthMm * infeedMm;
    return new CuttingLoad(
        kcMpa,
        infeedMm,
        forceN,
        forceN,
        passiveForceRatio * forceN,
        CuttingPower.torqueNm(forceN, 2 * radiusMm),
        CuttingPower.powerKw(forceN, cutMPerMin),
        KienzleConstants.validity(infeedMm));
  }
}
