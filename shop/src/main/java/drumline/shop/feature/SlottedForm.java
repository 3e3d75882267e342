package drumline.shop.feature;

import drumline.shop.contour.End;
import drumline.shop.tolerance.Tolerance;

/**
 * An inside form cut stroke by stroke with a tool that does not rotate.
 *
 * @param id name of the feature
 * @param end end it is reached from
 * @param form keyway, hexagon or square
 * @param widthMm width of the keyway, or size across flats
 * @param radialDepthMm greatest depth cut beyond the bore wall, across the axis
 * @param lengthMm length along the axis from the end's face
 * @param boreDiameterMm bore that it is cut from
 * @param tolerance tolerance of the width
 */
public record SlottedForm(
    String id,
    End end,
    Form form,
    double widthMm,
    double radialDepthMm,
    double lengthMm,
    double boreDiameterMm,
    Tolerance tolerance)
    implements Feature {

  /** Inside forms. */
  public enum Form {
    /** One straight-sided keyway. */
    KEYWAY(1),
    /** Four corners. */
    SQUARE(4),
    /** Six corners. */
    HEXAGON(6);

    private final int sideCount;

    Form(int sideCount) {
      this.sideCount = sideCount;
    }

    /** How many angular places must be cut. */
    public int sideCount() {
      return sideCount;
    }
  }
}
