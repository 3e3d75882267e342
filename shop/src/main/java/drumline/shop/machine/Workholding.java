package drumline.shop.machine;

/**
 * The collet and how it grips.
 *
 * @param gripN total radial grip at standstill
 * @param frictionRatio friction between collet and bar
 * @param jawMassKg mass of the gripping parts that turns off centre
 * @param jawRadiusMm radius of their centre of mass
 * @param safetyRatio factor that must stand between grip and load
 */
public record Workholding(
    double gripN, double frictionRatio, double jawMassKg, double jawRadiusMm, double safetyRatio) {}
