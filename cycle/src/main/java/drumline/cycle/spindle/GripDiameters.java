package drumline.cycle.spindle;

import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;

/**
 * The diameters that the collets grip on.
 *
 * @param drumMm bar in the drum's collets: diameter, or size across flats; above 0
 * @param pickUpMm piece in the pick-up spindle's collet; above 0
 */
public record GripDiameters(double drumMm, double pickUpMm) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if a diameter is not a finite number above 0
   */
  public GripDiameters {
    RangeCheck.positive("drumMm", drumMm);
    RangeCheck.positive("pickUpMm", pickUpMm);
  }

  /**
   * The bar's own size, and for the pick-up spindle the longest cylinder of the piece's outside,
   * the larger one of two that are as long; the bar's size where the outside is all taper. A setter
   * may grip elsewhere: then give both diameters.
   */
  public static GripDiameters of(Part part, Bar bar) {
    double pickUpMm =
        part.findLongestCylinder().map(OutsideStep::largestDiameterMm).orElse(bar.sizeMm());
    return new GripDiameters(bar.sizeMm(), pickUpMm);
  }
}
