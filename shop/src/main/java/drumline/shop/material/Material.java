package drumline.shop.material;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What bars are made of, with all that a study needs to know about it.
 *
 * @param name short name it is asked for by, e.g. {@code X8CrNiS18-9}
 * @param aliases other designations: EN number, UNS, AISI, trade name of a standard
 * @param group main group of ISO 513
 * @param densityKgPerDm3 density
 * @param hardnessHb Brinell hardness as delivered
 * @param tensileMpa tensile strength
 * @param elasticityGpa modulus of elasticity
 * @param elongationPct elongation at break; forming threads asks for some
 * @param force constants of Kienzle's cutting force
 * @param windows cutting values by process and tool material
 * @param pricePerKg price of bar stock in the library's currency
 * @param chipCreditPerKg what clean chips bring
 * @param currency ISO 4217 code of the prices
 * @param chipForm how chips break
 * @param cautions what a person must beware of, e.g. fire
 * @param confidence how well the figures are known that do not say so themselves
 * @param source where the general figures come from
 */
public record Material(
    String name,
    List<String> aliases,
    IsoGroup group,
    double densityKgPerDm3,
    double hardnessHb,
    double tensileMpa,
    double elasticityGpa,
    double elongationPct,
    CuttingForce force,
    List<CuttingWindow> windows,
    BigDecimal pricePerKg,
    BigDecimal chipCreditPerKg,
    String currency,
    ChipForm chipForm,
    List<String> cautions,
    Confidence confidence,
    String source) {

  /** Copies the lists. */
  public Material {
    aliases = List.copyOf(aliases);
    windows = List.copyOf(windows);
    cautions = List.copyOf(cautions);
  }

  /**
   * Constants of Kienzle's specific cutting force kc = kc1.1·h^−mc.
   *
   * @param specificForceMpa kc1.1, specific cutting force at a chip of 1 mm by 1 mm
   * @param exponentRatio mc, rise towards thin chips
   * @param confidence how well they are known
   * @param source where they come from
   */
  public record CuttingForce(
      double specificForceMpa, double exponentRatio, Confidence confidence, String source) {

    /** The same exponent with a specific force multiplied by a ratio above 0. */
    CuttingForce scaled(double ratio) {
      return new CuttingForce(specificForceMpa * ratio, exponentRatio, confidence, source);
    }
  }

  /** How chips come off. */
  public enum ChipForm {
    /** Short, falls away. */
    SHORT,
    /** Breaks with the right feed. */
    MEDIUM,
    /** Long; needs chip breakers, pecking or high-pressure coolant. */
    LONG
  }

  /** The cutting values for a process with a tool material, if the library has them. */
  public Optional<CuttingWindow> findWindow(CuttingProcess process, ToolMaterial toolMaterial) {
    return windows.stream()
        .filter(w -> w.process() == process && w.toolMaterial() == toolMaterial)
        .findFirst();
  }

  /** The same material with other cutting values. */
  public Material withCutting(CuttingForce newForce, List<CuttingWindow> newWindows) {
    return new Material(
        name,
        aliases,
        group,
        densityKgPerDm3,
        hardnessHb,
        tensileMpa,
        elasticityGpa,
        elongationPct,
        newForce,
        newWindows,
        pricePerKg,
        chipCreditPerKg,
        currency,
        chipForm,
        cautions,
        confidence,
        source);
  }

  /** The first window for a process, in the library's order of preference. */
  public Optional<CuttingWindow> findWindow(CuttingProcess process) {
    return windows.stream().filter(w -> w.process() == process).findFirst();
  }
}
