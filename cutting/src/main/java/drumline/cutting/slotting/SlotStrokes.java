package drumline.cutting.slotting;

import drumline.cutting.validity.Require;

/**
 * A slot cut stroke by stroke with the spindle held.
 *
 * <p>N = ⌈depth/ap⌉ + spring strokes; t = slots·{N·[0.06·s/vc + 0.06·s/vr + tt]} + (slots − 1)·ti +
 * th (s), s = l + 2·c in mm, speeds in m/min.
 *
 * <p>Source: [BASIS] 2.8, derived; [SHARMA] problem 4.16 for one double stroke; infeed 0.02–0.05 mm
 * [MAD], 4–12 m/min cutting, 15–30 m/min back, 0.05–0.15 s at the turn from memory.
 *
 * @param depthMm depth of the slot, above 0
 * @param infeedMm infeed ap for each stroke, above 0
 * @param springStrokesCount strokes without infeed, 0 or more
 * @param lengthMm length l of the slot, above 0
 * @param clearanceMm clearance c at each end, 0 or more
 * @param cutMPerMin cutting speed vc, above 0
 * @param returnMPerMin return speed vr, above 0
 * @param turnS time tt to turn, lift and feed in, for each double stroke, 0 or more
 * @param slotsCount slots around the work, at least 1
 * @param indexS time ti from one angle to the next, 0 or more
 * @param holdS time th to orient, clamp and unclamp the spindle, 0 or more
 */
public record SlotStrokes(
    double depthMm,
    double infeedMm,
    int springStrokesCount,
    double lengthMm,
    double clearanceMm,
    double cutMPerMin,
    double returnMPerMin,
    double turnS,
    int slotsCount,
    double indexS,
    double holdS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SlotStrokes {
    Require.positive("depthMm", depthMm);
    Require.positive("infeedMm", infeedMm);
    Require.atLeast("springStrokesCount", springStrokesCount, 0);
    Require.positive("lengthMm", lengthMm);
    Require.notNegative("clearanceMm", clearanceMm);
    Require.positive("cutMPerMin", cutMPerMin);
    Require.positive("returnMPerMin", returnMPerMin);
    Require.notNegative("turnS", turnS);
    Require.atLeast("slotsCount", slotsCount, 1);
    Require.notNegative("indexS", indexS);
    Require.notNegative("holdS", holdS);
  }

  /** Strokes N for one slot. */
  public int strokesCount() {
    return (int) Math.ceil(depthMm / infeedMm - 1e-9) + springStrokesCount;
  }

  /** Time of one double stroke. */
  public double strokeS() {
    return DoubleStroke.timeS(lengthMm + 2 * clearanceMm, cutMPerMin, returnMPerMin) + turnS;
  }

  /** Time of all slots. */
  public double timeS() {
    return slotsCount * strokesCount() * strokeS() + (slotsCount - 1) * indexS + holdS;
  }
}
