package drumline.shape.section;

import drumline.shop.operation.CutRegion;
import drumline.shop.part.Bar;
import java.util.Locale;
import java.util.Optional;

/**
 * A length of bar in the half-section.
 *
 * <p>Known limit: of hexagon and square bar the circle across corners is taken, so volumes of what
 * is turned from their outside count the gaps between the corners as material.
 */
public final class BarSection {

  private BarSection() {}

  /** The bar between two places, round through its corners. */
  public static HalfSection of(Bar bar, double fromZMm, double toZMm) {
    return cylinder(fromZMm, toZMm, bar.boreMm() / 2, bar.acrossCornersMm() / 2);
  }

  /**
   * Distance from the axis in mm of the flats of hexagon or square bar; empty for round bar. Where
   * a piece shows the bar's own surface, a thin inner line stands here.
   */
  public static Optional<Double> findFlatsRMm(Bar bar) {
    return bar.shape() == Bar.Shape.ROUND ? Optional.empty() : Optional.of(bar.sizeMm() / 2);
  }

  /** What a reader must know about the outline, in words; empty for round bar. */
  public static String note(Bar bar) {
    if (bar.shape() == Bar.Shape.ROUND) {
      return "";
    }
    String shape = bar.shape() == Bar.Shape.HEXAGON ? "hexagon" : "square";
    return String.format(
        Locale.ROOT,
        "%s bar %.2f mm across flats, drawn at its %.2f mm across corners",
        shape,
        bar.sizeMm(),
        bar.acrossCornersMm());
  }

  static HalfSection cylinder(double fromZMm, double toZMm, double innerRMm, double outerRMm) {
    return HalfSection.of(CutRegion.rectangle(fromZMm, toZMm, innerRMm, outerRMm));
  }
}
