package drumline.cutting.force;

import drumline.cutting.validity.Validity;

/**
 * What a cut asks of machine and grip, in directions of the lathe.
 *
 * <p>Source: none, it gathers the results of the load formulas; each says how it splits its force.
 *
 * @param specificForceMpa specific cutting force kc with all corrections, N/mm²
 * @param chipThicknessMm chip thickness h (mean, where the tool is a cutter); 0 where the formula
 *     has none
 * @param mainForceN force Fc in the direction of cutting speed, of all edges in cut together
 * @param axialForceN force along the work spindle's axis, positive towards the collet
 * @param radialForceN force towards the work spindle's axis
 * @param torqueNm torque at the spindle that makes the cutting speed: the work's for turning and
 *     standing drills, the tool's for live tools
 * @param powerKw cutting power at that spindle, without losses
 * @param validity ranges that were left
 */
public record CuttingLoad(
    double specificForceMpa,
    double chipThicknessMm,
    double mainForceN,
    double axialForceN,
    double radialForceN,
    double torqueNm,
    double powerKw,
    Validity validity) {

  /** The same load with further notes. */
  public CuttingLoad withNotes(Validity further) {
    return new CuttingLoad(
        specificForceMpa,
        chipThicknessMm,
        mainForceN,
        axialForceN,
        radialForceN,
        torqueNm,
        powerKw,
        validity.and(further));
  }
}
