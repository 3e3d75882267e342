package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;

/**
 * First critical speed of a bar between two loose supports.
 *
 * <p>n = (30/π)·(π/L)²·√(E·I/(ρ·A)).
 *
 * <p>Source: [BASIS] section 6, derived (bending vibration of a beam on two pins). Bars in a
 * multi-spindle usually run above it: liner clearance, damping and straightness decide then.
 * Caution: a whipping bar injures; no bar may stand out behind the machine unguided.
 *
 * @param section cross section
 * @param elasticityMpa Young's modulus E, above 0 (steel 206 000)
 * @param densityKgPerM3 density ρ, above 0 (steel 7850)
 */
public record BarWhirl(BarSection section, double elasticityMpa, double densityKgPerM3) {
  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public BarWhirl {
    Require.positive("elasticityMpa", elasticityMpa);
    Require.positive("densityKgPerM3", densityKgPerM3);
  }

  /** A steel bar. */
  public static BarWhirl steel(BarSection section) {
    return new BarWhirl(section, 206_000, 7850);
  }

  /**
   * Critical speed.
   *
   * @param spanMm distance L between supports, above 0
   * @throws IllegalArgumentException if the span is not above 0
   */
  public double criticalRevPerMin(double spanMm) {
    Require.positive("spanMm", spanMm);
    double wavePerMm = Math.PI / spanMm;
    return 30 / Math.PI * wavePerMm * wavePerMm * stiffnessMm2PerS();
  }

  /**
   * Longest span whose critical speed is not below a speed.
   *
   * @param speedRevPerMin spindle speed, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double longestSpanMm(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return Math.PI * Math.sqrt(30 / Math.PI * stiffnessMm2PerS() / speedRevPerMin);
  }

  /** √(E·I/(ρ·A)) in mm²/s; ρ in kg/m³ is 1e-12 t/mm³. */
  private double stiffnessMm2PerS() {
    double massTPerMm = densityKgPerM3 * 1e-12 * section.areaMm2();
    return Math.sqrt(elasticityMpa * section.inertiaMm4() / massTPerMm);
  }
}
