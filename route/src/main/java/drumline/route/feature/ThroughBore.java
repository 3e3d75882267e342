package drumline.route.feature;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.part.Part;

/** Bores whose tools go out through the back. */
public final class ThroughBore {
  private ThroughBore() {}

  /**
   * Whether a front step's tools go out through the back: it ends there, or so near that what is
   * left belongs to a wider step from the back, such as a chamfer.
   */
  public static boolean is(Part part, BoreStep step) {
    double left = part.lengthMm() - step.toDepthMm();
    return step.end() == End.FRONT
        && step.bottom() == Bottom.THROUGH
        && left <= step.endDiameterMm() / 2;
  }
}
