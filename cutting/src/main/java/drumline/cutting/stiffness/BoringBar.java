package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * A boring bar: its bending, and whether its overhang is in the usual range.
 *
 * <p>y = F·l³/(3·E·I), I = π·D⁴/64; l/D up to 4 steel, 6 carbide, 6 heavy metal, 7 damped steel, 10
 * damped carbide.
 *
 * <p>Source: [BASIS] section 6; limits and moduli from memory; clamped over at least 3–4·D [ISAK].
 *
 * @param shankDiameterMm shank diameter D, above 0
 * @param overhangMm overhang l, above 0
 * @param kind what the bar is made of
 */
public record BoringBar(double shankDiameterMm, double overhangMm, Kind kind) {
  /** What a boring bar is made of. */
  public enum Kind {
    /** Steel. */
    STEEL(206_000, 4),
    /** Heavy metal (tungsten alloy). */
    HEAVY_METAL(350_000, 6),
    /** Carbide. */
    CARBIDE(570_000, 6),
    /** Steel with a damper. */
    DAMPED_STEEL(206_000, 7),
    /** Carbide with a damper. */
    DAMPED_CARBIDE(570_000, 10);

    private final double elasticityMpa;
    private final double longestRatio;

    Kind(double elasticityMpa, double longestRatio) {
      this.elasticityMpa = elasticityMpa;
      this.longestRatio = longestRatio;
    }

    /** Young's modulus E. */
    public double elasticityMpa() {
      return elasticityMpa;
    }

    /** Usual limit of overhang to diameter. */
    public double longestRatio() {
      return longestRatio;
    }
  }

  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public BoringBar {
    Require.positive("shankDiameterMm", shankDiameterMm);
    Require.positive("overhangMm", overhangMm);
  }

  /**
   * Bending at the edge.
   *
   * @param forceN force across the bar, 0 or more
   * @throws IllegalArgumentException if the force is negative
   */
  public double deflectionUm(double forceN) {
    BarSection section = new BarSection.Round(shankDiameterMm);
    return 1000 * BendingDeflection.overhangMm(forceN, overhangMm, kind.elasticityMpa(), section);
  }

  /** Overhang to diameter. */
  public double slendernessRatio() {
    return overhangMm / shankDiameterMm;
  }

  /** Whether the overhang is in the usual range of its kind. */
  public Validity validity() {
    return Validity.of(
        "overhang to shank diameter",
        slendernessRatio(),
        0,
        kind.longestRatio(),
        "",
        "the bar is likely to chatter");
  }
}
