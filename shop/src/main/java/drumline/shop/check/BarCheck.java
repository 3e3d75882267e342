package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.OutsideStep.Surface;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;

/** The bar is large enough for every turned step, with stock left to turn, and long enough. */
final class BarCheck {

  /** Least stock on the diameter that cleans a drawn surface; common practice. */
  private static final double STOCK_MM = 0.2;

  private BarCheck() {}

  static void check(Part part, Bar bar, Findings findings) {
    for (OutsideStep step : part.outside()) {
      if (step.surface() == Surface.TURNED) {
        turned(step, bar, findings);
      }
    }
    if (part.lengthMm() >= bar.lengthMm()) {
      findings.error(
          "bar-too-short",
          "bar",
          "a piece of " + mm(part.lengthMm()) + " from bars of " + mm(bar.lengthMm()),
          "bars longer than the piece");
    }
    if (bar.boreMm() > 0 && part.frontBore().isEmpty()) {
      findings.error(
          "tube-for-solid",
          "bar",
          "a tube with a bore of " + mm(bar.boreMm()),
          "solid bar for a piece without a front bore");
    }
  }

  private static void turned(OutsideStep step, Bar bar, Findings findings) {
    double stockMm = bar.sizeMm() - step.largestDiameterMm();
    String found = "Ø " + mm(step.largestDiameterMm()) + " from " + words(bar);
    if (stockMm < -Profile.ROUNDING_MM) {
      findings.error(
          "bar-too-small",
          step.id(),
          found,
          "up to Ø " + mm(bar.sizeMm() - STOCK_MM),
          bar.shape() != Bar.Shape.ROUND && step.largestDiameterMm() <= bar.acrossCornersMm()
              ? "Maybe \"surface: bar\" and an edge: beyond the flats the step is not round."
              : "");
    } else if (stockMm < STOCK_MM - Profile.ROUNDING_MM) {
      findings.warning(
          "little-stock", step.id(), found, mm(STOCK_MM) + " on the diameter or more to clean up");
    }
  }

  private static String words(Bar bar) {
    return switch (bar.shape()) {
      case ROUND -> "a bar of Ø " + mm(bar.sizeMm());
      case HEXAGON -> "hexagon bar of " + mm(bar.sizeMm()) + " across flats";
      case SQUARE -> "square bar of " + mm(bar.sizeMm()) + " across flats";
    };
  }
}
