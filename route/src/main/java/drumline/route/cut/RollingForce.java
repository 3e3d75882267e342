package drumline.route.cut;

import drumline.shop.material.Material;
import drumline.shop.thread.ThreadSize;

/**
 * Force with which rolls press on the work.
 *
 * <p>F = 2·Rm·b·l: Rm tensile strength in N/mm², b width of contact around the work, taken as a
 * fifth of the thread's depth times the square root of its diameter, l thread length in mm; a rough
 * estimate for the check of slide and section. Source: from memory, weak; the maker of the rolls
 * decides.
 */
final class RollingForce {
  private RollingForce() {}

  static double radialN(Material material, ThreadSize size, double lengthMm) {
    double contact = 0.2 * 0.6134 * size.pitchMm() * Math.sqrt(size.majorMm());
    return 2 * material.tensileMpa() * contact * lengthMm;
  }
}
