package drumline.shop.thread;

import drumline.shop.thread.ThreadSize.ExternalLimits;
import drumline.shop.thread.ThreadSize.InternalLimits;

/**
 * Limits of unified threads by formula, in inches, rounded as the standard's tables are.
 *
 * <p>Pitch diameter, class 2A: T = 0.0015 ∛D + 0.0015 √LE + 0.015 ∛p², with length of engagement LE
 * = D for UNC and UNF and 9 p for UNEF; 3A 0.75 T, 2B 1.3 T, 3B 0.975 T. Allowance of 2A: 0.3 T.
 * Major diameter of 2A and 3A: 0.060 ∛p². Minor diameter of 2B from 1/4 in: 0.25 p − 0.4 p²; below,
 * and for 3B: 0.05 ∛p² + 0.03 p/D − 0.002, at most 0.394 p and at least 0.25 p − 0.4 p² (2B) or,
 * for 3B, 0.23 p − 1.5 p² (0.120 p from 12 threads per inch on).
 *
 * <p>Source: [ASME-B1.1] 2003, sections 5 and 8; from memory. Rounding, found by comparing with the
 * tables: T to six decimals; the allowance is 0.3 times T rounded to four, a half to the even
 * digit; limits to four decimals; the lower limit of the minor diameter from 0.138 in, and the
 * upper one of 2B, to three, the upper one after adding size and tolerance rounded to four. In
 * these formulas D, p and LE are in inches.
 *
 * @param majorMm major diameter D, 1.524 to 50.8 mm
 * @param pitchMm pitch p, mm
 * @param engagementMm length of engagement LE, mm
 * @param threadClass 2 or 3
 */
record UnifiedLimits(double majorMm, double pitchMm, double engagementMm, int threadClass) {

  private static final double IN_MM = 25.4;
  private static final double QUARTER_INCH = 0.25;
  private static final double FOUR_DECIMALS_BELOW_IN = 0.138;

  double pitchDiameterMm() {
    return mm(pitchDiameterIn());
  }

  double minorMm() {
    return minorIn() * IN_MM;
  }

  private double majorIn() {
    return StandardRounding.halfUp(majorMm / IN_MM, 6);
  }

  private double pitchIn() {
    return pitchMm / IN_MM;
  }

  private double pitchDiameterIn() {
    return StandardRounding.halfUp(majorIn() - 0.75 * height(), 4);
  }

  private double minorIn() {
    return majorIn() - 1.25 * height();
  }

  private double height() {
    return pitchIn() * Math.sqrt(3) / 2;
  }

  private double twoThirdsPower() {
    return Math.cbrt(pitchIn() * pitchIn());
  }

  private double basicToleranceIn() {
    double t =
        0.0015 * Math.cbrt(majorIn())
            + 0.0015 * Math.sqrt(engagementMm / IN_MM)
            + 0.015 * twoThirdsPower();
    return StandardRounding.halfUp(t, 6);
  }

  private double allowanceIn() {
    return threadClass == 3
        ? 0
        : StandardRounding.halfEven(0.3 * StandardRounding.halfUp(basicToleranceIn(), 4), 4);
  }

  ExternalLimits external() {
    double majorMaxIn = StandardRounding.halfUp(majorIn(), 4) - allowanceIn();
    double pitchMaxIn = pitchDiameterIn() - allowanceIn();
    double crestIn = StandardRounding.halfUp(0.06 * twoThirdsPower(), 4);
    double share = threadClass == 3 ? 0.75 : 1;
    double widthIn = StandardRounding.halfUp(share * basicToleranceIn(), 4);
    return new ExternalLimits(
        mm(majorMaxIn), mm(majorMaxIn - crestIn), mm(pitchMaxIn), mm(pitchMaxIn - widthIn));
  }

  InternalLimits internal() {
    double share = threadClass == 3 ? 0.975 : 1.3;
    double widthIn = StandardRounding.halfUp(share * basicToleranceIn(), 4);
    boolean fine = majorIn() < FOUR_DECIMALS_BELOW_IN;
    double minorMinIn = StandardRounding.halfUp(minorIn(), fine ? 4 : 3);
    double fineMaxIn =
        StandardRounding.halfUp(minorIn(), 4) + StandardRounding.halfUp(minorToleranceIn(), 4);
    boolean toFour = threadClass == 3 || fine;
    double minorMaxIn = StandardRounding.halfUp(fineMaxIn, toFour ? 4 : 3);
    return new InternalLimits(
        mm(minorMinIn), mm(minorMaxIn), mm(pitchDiameterIn()), mm(pitchDiameterIn() + widthIn));
  }

  private double minorToleranceIn() {
    double regular = 0.25 * pitchIn() - 0.4 * pitchIn() * pitchIn();
    if (threadClass == 2 && majorIn() >= QUARTER_INCH) {
      return regular;
    }
    boolean coarse = pitchIn() > 1.0 / 12.5;
    double closeIn = coarse ? 0.12 * pitchIn() : 0.23 * pitchIn() - 1.5 * pitchIn() * pitchIn();
    double atLeastIn = threadClass == 2 ? regular : closeIn;
    double formulaIn = 0.05 * twoThirdsPower() + 0.03 * pitchIn() / majorIn() - 0.002;
    return Math.min(Math.max(formulaIn, atLeastIn), 0.394 * pitchIn());
  }

  private static double mm(double in) {
    return StandardRounding.halfUp(in, 4) * IN_MM;
  }
}
