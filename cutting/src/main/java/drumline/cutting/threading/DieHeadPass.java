package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Thread cut or rolled in one axial pass by a head that opens at the end, so nothing reverses.
 *
 * <p>t = 60·(la + l + e)/(lead·n) + to (s), e the chaser's or roll's lead.
 *
 * <p>Source: [BASIS] 2.4 and 2.6, derived.
 *
 * @param lengthMm length l of thread, above 0
 * @param chaserLeadMm length e of the chasers' or rolls' lead, 0 or more
 * @param approachMm approach la at the thread's lead, 0 or more
 * @param leadMm lead of the thread, above 0
 * @param openS time to opens the head, 0 or more
 */
public record DieHeadPass(
    double lengthMm, double chaserLeadMm, double approachMm, double leadMm, double openS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public DieHeadPass {
    Require.positive("lengthMm", lengthMm);
    Require.notNegative("chaserLeadMm", chaserLeadMm);
    Require.notNegative("approachMm", approachMm);
    Require.positive("leadMm", leadMm);
    Require.notNegative("openS", openS);
  }

  /**
   * Time of the pass.
   *
   * @param speedRevPerMin speed between work and head, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * (approachMm + lengthMm + chaserLeadMm) / (leadMm * speedRevPerMin) + openS;
  }
}
