package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Cutting power from the energy that a cubic millimetre of chips takes: the screen against which
 * other answers are held.
 *
 * <p>P = u·Q/1000 (kW), u in J/mm³ (the same number as GPa), Q in mm³/s; Fc = 60000·P/vc.
 *
 * <p>Source: [QAMM] worked problem on a titanium rod; unit energies by material are from memory.
 */
public final class SpecificEnergyPower {
  private SpecificEnergyPower() {}

  /**
   * Power.
   *
   * @param unitEnergyJPerMm3 energy u, above 0
   * @param removalMm3PerS removal rate Q, 0 or more
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double powerKw(double unitEnergyJPerMm3, double removalMm3PerS) {
    Require.positive("unitEnergyJPerMm3", unitEnergyJPerMm3);
    Require.notNegative("removalMm3PerS", removalMm3PerS);
    return unitEnergyJPerMm3 * removalMm3PerS / 1000;
  }

  /**
   * Removal rate of a turning pass, with the volume of the ring taken at its mean diameter: Q =
   * π·(D+d)/2·(D−d)/2·f·n/60.
   *
   * @param fromDiameterMm diameter D before the pass, above toDiameterMm
   * @param toDiameterMm diameter d after the pass, 0 or more
   * @param feedMmPerRev feed f, above 0
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double turningRemovalMm3PerS(
      double fromDiameterMm, double toDiameterMm, double feedMmPerRev, double speedRevPerMin) {
    Require.positive("fromDiameterMm", fromDiameterMm);
    Require.between("toDiameterMm", toDiameterMm, 0, fromDiameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("speedRevPerMin", speedRevPerMin);
    double ringMm2 = Math.PI / 4 * (fromDiameterMm * fromDiameterMm - toDiameterMm * toDiameterMm);
    return ringMm2 * feedMmPerRev * speedRevPerMin / 60;
  }
}
