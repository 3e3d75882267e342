package drumline.cutting.clamping;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Grip of a collet or chuck as it turns.
 *
 * <p>Outside grip: F = F0 − Fc; inside grip: F = F0 + Fc; Fc = Σ m·r·(π·n/30)². EN 1550 allows Fc
 * up to 0.67·F0.
 *
 * <p>Source: [VDI-3106] and [EN-1550] as quoted by [SCHUNK] and [OPTIMUM]. Caution: the plate on
 * the chuck or collet and the maker's limits go before this; grip must be measured on the machine.
 *
 * @param standingN total radial grip F0 at standstill, above 0
 * @param massKg mass of all jaws or segments together, 0 or more
 * @param radiusMm distance of their centre of gravity from the axis, 0 or more
 * @param side side on which the work is gripped
 */
public record TurningGrip(double standingN, double massKg, double radiusMm, Side side) {
  /** Share of the standing grip that centrifugal force may take, EN 1550. */
  public static final double EN_1550_RATIO = 0.67;

  /** Side on which the work is gripped. */
  public enum Side {
    /** From outside: speed loosens the grip. */
    OUTSIDE,
    /** From inside: speed tightens it. */
    INSIDE
  }

  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public TurningGrip {
    Require.positive("standingN", standingN);
    Require.notNegative("massKg", massKg);
    Require.notNegative("radiusMm", radiusMm);
  }

  /**
   * Grip left at a speed; 0 when the jaws have lifted.
   *
   * @param speedRevPerMin speed n, 0 or more
   * @throws IllegalArgumentException if the speed is negative
   */
  public double gripN(double speedRevPerMin) {
    double pullN = CentrifugalForce.forceN(massKg, radiusMm, speedRevPerMin);
    return side == Side.INSIDE ? standingN + pullN : Math.max(0, standingN - pullN);
  }

  /**
   * Whether the pull stays within 0.67 of the standing grip.
   *
   * @param speedRevPerMin speed n, 0 or more
   * @throws IllegalArgumentException if the speed is negative
   */
  public Validity validity(double speedRevPerMin) {
    return Validity.of(
        "centrifugal force",
        CentrifugalForce.forceN(massKg, radiusMm, speedRevPerMin),
        0,
        EN_1550_RATIO * standingN,
        "N",
        "EN 1550 does not allow this speed with this grip");
  }

  /**
   * Speed at which the pull is 0.67 of the standing grip.
   *
   * @throws IllegalArgumentException if mass or radius is 0
   */
  public double en1550RevPerMin() {
    return CentrifugalForce.speedRevPerMin(massKg, radiusMm, EN_1550_RATIO * standingN);
  }

  /**
   * Reference speed: where a required grip is just left, from outside.
   *
   * @param requiredN grip that must be left, 0 … standing grip
   * @throws IllegalArgumentException if the required grip is outside its range, mass or radius is
   *     0, or the grip is from inside
   */
  public double referenceRevPerMin(double requiredN) {
    Require.between("requiredN", requiredN, 0, standingN);
    if (side == Side.INSIDE) {
      throw new IllegalArgumentException(
          "side is INSIDE; allowed is OUTSIDE: speed does not loosen a grip from inside.");
    }
    return CentrifugalForce.speedRevPerMin(massKg, radiusMm, standingN - requiredN);
  }
}
