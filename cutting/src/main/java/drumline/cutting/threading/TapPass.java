package drumline.cutting.threading;

import drumline.cutting.drilling.RelativeSpeed;
import drumline.cutting.validity.Require;

/**
 * Tapping in and out, by reversing the spindle or by a tap that turns in ratio to the work.
 *
 * <p>e = (chamfer + 1)·P; reversing: t = 60·(l + e)/(P·n) + 60·(l + e)/(P·nr) + tr, tr = (n +
 * nr)/α; ratio: the speeds between work and tap count, and tr is the time of the tap spindle's
 * change.
 *
 * <p>Source: [BASIS] 2.4, derived; chamfer lengths of taps from memory (DIN 2197).
 *
 * @param depthMm length l of full thread, above 0
 * @param pitchMm pitch P, above 0
 * @param chamfer form of the tap's chamfer
 */
public record TapPass(double depthMm, double pitchMm, Chamfer chamfer) {
  /** Form of a tap's chamfer. */
  public enum Chamfer {
    /** Through holes, spiral point: 4 pitches. */
    FORM_B(4),
    /** Blind holes and short-chipping metal: 2.5 pitches. */
    FORM_C(2.5),
    /** Blind holes with short run-out: 1.75 pitches. */
    FORM_E(1.75);

    private final double pitchesCount;

    Chamfer(double pitchesCount) {
      this.pitchesCount = pitchesCount;
    }

    /** Chamfer length in pitches. */
    public double pitchesCount() {
      return pitchesCount;
    }
  }

  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public TapPass {
    Require.positive("depthMm", depthMm);
    Require.positive("pitchMm", pitchMm);
  }

  /** Way in: depth, chamfer and one pitch. */
  public double travelMm() {
    return depthMm + (chamfer.pitchesCount() + 1) * pitchMm;
  }

  /** Revolutions between tap and work on the way in; the way out takes as many. */
  public double revolutionsCount() {
    return travelMm() / pitchMm;
  }

  /**
   * Time with a spindle that reverses.
   *
   * @param inRevPerMin speed n in, above 0
   * @param outRevPerMin speed nr out, above 0
   * @param accelerationRevPerMinPerS acceleration α of the spindle, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double reversingS(
      double inRevPerMin, double outRevPerMin, double accelerationRevPerMinPerS) {
    Require.positive("inRevPerMin", inRevPerMin);
    Require.positive("outRevPerMin", outRevPerMin);
    Require.positive("accelerationRevPerMinPerS", accelerationRevPerMinPerS);
    double turnS = (inRevPerMin + outRevPerMin) / accelerationRevPerMinPerS;
    return 60 * revolutionsCount() * (1 / inRevPerMin + 1 / outRevPerMin) + turnS;
  }

  /**
   * Time with work that turns on and a tap that runs behind it on the way in and ahead on the way
   * out, both in the work's sense.
   *
   * @param workRevPerMin speed of the work, above 0
   * @param tapInRevPerMin speed of the tap on the way in, other than the work's
   * @param tapOutRevPerMin speed of the tap on the way out, on the other side of the work's
   * @param changeS time of the tap spindle's change of speed, 0 or more
   * @throws IllegalArgumentException if a value is outside its range, or the tap's two speeds are
   *     not on either side of the work's
   */
  public double differentialS(
      double workRevPerMin, double tapInRevPerMin, double tapOutRevPerMin, double changeS) {
    Require.positive("workRevPerMin", workRevPerMin);
    Require.notNegative("changeS", changeS);
    double in = RelativeSpeed.revPerMin(workRevPerMin, tapInRevPerMin, RelativeSpeed.Sense.SAME);
    double out = RelativeSpeed.revPerMin(workRevPerMin, tapOutRevPerMin, RelativeSpeed.Sense.SAME);
    Require.positive("speed between work and tap, in", in);
    Require.positive("speed between work and tap, out", out);
    boolean sides = (workRevPerMin > tapInRevPerMin) == (tapOutRevPerMin > workRevPerMin);
    if (!sides) {
      throw new IllegalArgumentException(
          String.format(
              "tapInRevPerMin is %s and tapOutRevPerMin is %s; allowed is one below and one above"
                  + " workRevPerMin %s.",
              tapInRevPerMin, tapOutRevPerMin, workRevPerMin));
    }
    return 60 * revolutionsCount() * (1 / in + 1 / out) + changeS;
  }
}
