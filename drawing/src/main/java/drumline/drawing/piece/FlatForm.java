package drumline.drawing.piece;

import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Flats;
import drumline.shop.part.Bar;
import java.util.Optional;

/**
 * Flats equally spaced around the axis, one of them facing the reader.
 *
 * <p>Formula: in the direction θ the surface stands at min(r, a/cos δ), with r radius of the body
 * and a distance of the flats from the axis in mm, δ angle between θ and the nearest flat's normal.
 *
 * <p>Source: geometry.
 *
 * @param element id of the feature or step
 * @param fromZMm where they begin
 * @param toZMm where they end
 * @param insideRMm distance of the flats from the axis
 * @param count number of flats
 * @param origin whether they are milled or the bar's own
 */
public record FlatForm(
    String element, double fromZMm, double toZMm, double insideRMm, int count, Origin origin) {

  /** Who makes the flats. */
  public enum Origin {
    /** Cut on the machine. */
    MILLED,
    /** The bar's own. */
    BAR
  }

  static FlatForm of(Flats flats) {
    return new FlatForm(
        flats.id(),
        flats.fromZMm(),
        flats.toZMm(),
        flats.acrossMm() / 2,
        flats.count(),
        Origin.MILLED);
  }

  /** The bar's own flats on a step that is not turned. */
  static Optional<FlatForm> find(OutsideStep step, Bar bar) {
    if (step.surface() != OutsideStep.Surface.BAR || bar.shape() == Bar.Shape.ROUND) {
      return Optional.empty();
    }
    int count = bar.shape() == Bar.Shape.HEXAGON ? 6 : 4;
    return Optional.of(
        new FlatForm(step.id(), step.fromZMm(), step.toZMm(), bar.sizeMm() / 2, count, Origin.BAR));
  }

  /** Distance of the surface from the axis in a direction, 0° toward the reader. */
  public double surfaceRMm(double bodyRMm, double directionDeg) {
    double stepDeg = 360.0 / count;
    double offDeg = Math.abs(directionDeg - stepDeg * Math.round(directionDeg / stepDeg));
    double cosine = Math.cos(Math.toRadians(offDeg));
    return cosine <= 1e-9 ? bodyRMm : Math.min(bodyRMm, insideRMm / cosine);
  }

  /** Greatest height of the body above the axis as the reader sees it. */
  public double silhouetteRMm(double bodyRMm) {
    double highestMm = 0;
    for (double deg = 0; deg <= 180; deg += 0.5) {
      highestMm = Math.max(highestMm, surfaceRMm(bodyRMm, deg) * Math.sin(Math.toRadians(deg)));
    }
    return highestMm;
  }

  /** Half the width of the flat that faces the reader; 0 where the body does not reach it. */
  public double halfWidthMm(double bodyRMm) {
    if (bodyRMm <= insideRMm) {
      return 0;
    }
    double byBodyMm = Math.sqrt(bodyRMm * bodyRMm - insideRMm * insideRMm);
    return count < 3 ? byBodyMm : Math.min(byBodyMm, insideRMm * Math.tan(Math.PI / count));
  }
}
