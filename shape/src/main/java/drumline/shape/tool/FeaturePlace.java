package drumline.shape.tool;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.feature.SlottedForm;
import java.util.Optional;

/**
 * Where a feature lies that is not turned, as seen from the working end.
 *
 * @param fromZMm where it begins along the axis, from the working end's face
 * @param toZMm where it ends, greater or the same
 * @param topRMm radius of the surface that it is made in, or that a face feature lies on
 * @param depthMm how deep it goes from there
 * @param place surface that it is in
 */
record FeaturePlace(double fromZMm, double toZMm, double topRMm, double depthMm, Place place) {

  /** Surfaces that features lie in. */
  enum Place {
    /** Outside: the tool comes across the axis. */
    OUTSIDE,
    /** Bore: the tool comes along the axis. */
    INSIDE,
    /** Face: the tool comes along the axis, off centre. */
    FACE
  }

  double middleZMm() {
    return (fromZMm + toZMm) / 2;
  }

  double lengthMm() {
    return toZMm - fromZMm;
  }

  /** The place of a feature or step; empty where nothing of that name is on the print. */
  static Optional<FeaturePlace> find(WorkSide side, String featureId) {
    Optional<Feature> feature =
        side.part().features().stream().filter(f -> f.id().equals(featureId)).findFirst();
    if (feature.isPresent()) {
      return feature.flatMap(f -> of(side, f));
    }
    return side.part()
        .findOutside(featureId)
        .map(step -> outside(side, step))
        .or(() -> side.part().findBore(featureId).map(step -> bore(side, step)));
  }

  private static Optional<FeaturePlace> of(WorkSide side, Feature feature) {
    if (feature instanceof ScrewThread thread) {
      return thread(side, thread);
    } else if (feature instanceof Deburring deburring) {
      return find(side, deburring.ofFeature());
    } else if (feature instanceof Knurl knurl) {
      return Optional.of(over(side, knurl.fromZMm(), knurl.toZMm(), 0));
    } else if (feature instanceof Flats flats) {
      return Optional.of(flats(side, flats));
    } else if (feature instanceof CrossHole hole) {
      double half = hole.diameterMm() / 2;
      double top = side.surfaceRMm(hole.zMm());
      double depth = hole.reach() == CrossHole.Reach.THROUGH ? 2 * top : hole.depthMm();
      return Optional.of(over(side, hole.zMm() - half, hole.zMm() + half, depth));
    } else if (feature instanceof FaceHoles holes) {
      return Optional.of(
          new FeaturePlace(0, holes.depthMm(), holes.pitchCircleMm() / 2, 0, Place.FACE));
    } else if (feature instanceof MilledSlot slot) {
      return Optional.of(slot(side, slot));
    } else if (feature instanceof SlottedForm form) {
      double top = form.boreDiameterMm() / 2 + form.radialDepthMm();
      return Optional.of(
          new FeaturePlace(0, form.lengthMm(), top, form.radialDepthMm(), Place.INSIDE));
    } else if (feature instanceof Engraving text) {
      return Optional.of(text(side, text));
    } else if (feature instanceof Groove groove) {
      return Optional.of(over(side, groove.atMm(), groove.atMm() + groove.widthMm(), 0));
    }
    return Optional.empty();
  }

  private static FeaturePlace over(WorkSide side, double fromZ, double toZ, double depthMm) {
    double top = side.surfaceRMm((fromZ + toZ) / 2);
    double a = side.zMm(fromZ);
    double b = side.zMm(toZ);
    return new FeaturePlace(Math.min(a, b), Math.max(a, b), top, depthMm, Place.OUTSIDE);
  }

  private static FeaturePlace outside(WorkSide side, OutsideStep step) {
    return over(side, step.fromZMm(), step.toZMm(), 0);
  }

  private static FeaturePlace bore(WorkSide side, BoreStep step) {
    boolean near =
        (step.end() == drumline.shop.contour.End.FRONT) == (side.end() == WorkSide.End.FRONT);
    double length = side.part().lengthMm();
    double from = near ? step.fromDepthMm() : length - step.toDepthMm();
    double to = near ? step.toDepthMm() : length - step.fromDepthMm();
    return new FeaturePlace(from, to, step.smallestDiameterMm() / 2, 0, Place.INSIDE);
  }

  private static Optional<FeaturePlace> thread(WorkSide side, ScrewThread thread) {
    return side.part()
        .findOutside(thread.onElement())
        .map(step -> outsideThread(side, step, thread))
        .or(
            () ->
                side.part()
                    .findBore(thread.onElement())
                    .map(
                        step -> {
                          FeaturePlace all = bore(side, step);
                          double to = Math.min(all.toZMm, all.fromZMm + thread.lengthMm());
                          return new FeaturePlace(all.fromZMm, to, all.topRMm, 0, Place.INSIDE);
                        }));
  }

  /** A thread begins at the end of its step from which a nut could be screwed on. */
  private static FeaturePlace outsideThread(WorkSide side, OutsideStep step, ScrewThread thread) {
    double before = step.fromZMm() < 0.01 ? 0 : side.surfaceRMm(step.fromZMm() - 0.01);
    boolean isFromFront = before <= step.largestDiameterMm() / 2;
    double length = Math.min(thread.lengthMm(), step.lengthMm());
    return isFromFront
        ? over(side, step.fromZMm(), step.fromZMm() + length, 0)
        : over(side, step.toZMm() - length, step.toZMm(), 0);
  }

  private static FeaturePlace flats(WorkSide side, Flats flats) {
    FeaturePlace all = over(side, flats.fromZMm(), flats.toZMm(), 0);
    return new FeaturePlace(
        all.fromZMm, all.toZMm, all.topRMm, all.topRMm - flats.acrossMm() / 2, Place.OUTSIDE);
  }

  private static FeaturePlace slot(WorkSide side, MilledSlot slot) {
    return slot.place() == MilledSlot.Place.OUTSIDE
        ? over(side, slot.zMm(), slot.zMm() + slot.lengthMm(), slot.depthMm())
        : new FeaturePlace(0, slot.depthMm(), 0, 0, Place.FACE);
  }

  private static FeaturePlace text(WorkSide side, Engraving text) {
    return text.place() == Engraving.Place.OUTSIDE
        ? over(
            side,
            text.atMm() - text.heightMm() / 2,
            text.atMm() + text.heightMm() / 2,
            text.depthMm())
        : new FeaturePlace(0, text.depthMm(), text.atMm(), 0, Place.FACE);
  }
}
