package drumline.shape.workpiece;

import drumline.shape.section.HalfSection;

/**
 * What one operation took away.
 *
 * @param operationId the operation
 * @param swept all that its tool sweeps
 * @param removed what of that was still there
 */
public record Removal(String operationId, HalfSection swept, HalfSection removed) {

  /** Area taken in the half-section in mm². */
  public double areaMm2() {
    return removed.areaMm2();
  }

  /** Volume of chips in mm³. */
  public double volumeMm3() {
    return removed.volumeMm3();
  }

  /** Share in percent of the swept area that was air already; 0 where nothing is swept. */
  public double airPct() {
    double sweptMm2 = swept.areaMm2();
    return sweptMm2 == 0 ? 0 : 100 * (1 - removed.areaMm2() / sweptMm2);
  }
}
