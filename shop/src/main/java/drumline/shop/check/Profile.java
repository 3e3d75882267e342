package drumline.shop.check;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Diameters of the piece along its axis, without features; z from the front face, mm.
 *
 * @param lengthMm length of the piece
 * @param outside stretches of the outside
 * @param inside stretches of the bores, both ends
 */
record Profile(double lengthMm, List<Stretch> outside, List<Stretch> inside) {

  /** Differences below this are binary rounding. */
  static final double ROUNDING_MM = 1e-6;

  static Profile of(Part part) {
    List<Stretch> outside = new ArrayList<>();
    for (OutsideStep step : part.outside()) {
      outside.add(
          new Stretch(step.fromZMm(), step.toZMm(), step.startDiameterMm(), step.endDiameterMm()));
    }
    List<Stretch> inside =
        Stream.concat(part.frontBore().stream(), part.backBore().stream())
            .map(step -> stretch(step, part.lengthMm()))
            .toList();
    return new Profile(part.lengthMm(), outside, inside);
  }

  private static Stretch stretch(BoreStep step, double lengthMm) {
    return step.end() == End.FRONT
        ? new Stretch(
            step.fromDepthMm(), step.toDepthMm(), step.startDiameterMm(), step.endDiameterMm())
        : new Stretch(
            lengthMm - step.toDepthMm(),
            lengthMm - step.fromDepthMm(),
            step.endDiameterMm(),
            step.startDiameterMm());
  }

  /** Least outside diameter between two z; empty where there is no outside. */
  OptionalDouble findLeastOutside(double fromMm, double toMm) {
    return outside.stream().flatMap(s -> s.ends(fromMm, toMm)).mapToDouble(d -> d).min();
  }

  /** Greatest outside diameter between two z; empty where there is no outside. */
  OptionalDouble findGreatestOutside(double fromMm, double toMm) {
    return outside.stream().flatMap(s -> s.ends(fromMm, toMm)).mapToDouble(d -> d).max();
  }

  /** Greatest bore between two z, 0 where it is solid. */
  double greatestBoreMm(double fromMm, double toMm) {
    return inside.stream().flatMap(s -> s.ends(fromMm, toMm)).mapToDouble(d -> d).max().orElse(0);
  }

  /** Least bore between two z over the stretches that are bored; empty where it is solid. */
  OptionalDouble findLeastBore(double fromMm, double toMm) {
    return inside.stream().flatMap(s -> s.ends(fromMm, toMm)).mapToDouble(d -> d).min();
  }

  /** z from the front face of a depth from one end. */
  double zMm(End end, double depthMm) {
    return end == End.FRONT ? depthMm : lengthMm - depthMm;
  }

  /**
   * A stretch along the axis.
   *
   * @param fromMm where it begins
   * @param toMm where it ends
   * @param startMm diameter at its beginning
   * @param endMm diameter at its end
   */
  record Stretch(double fromMm, double toMm, double startMm, double endMm) {

    /** Diameters at both ends of the part of it that lies between two z, if any does. */
    Stream<Double> ends(double lowMm, double highMm) {
      double a = Math.max(fromMm, lowMm);
      double b = Math.min(toMm, highMm);
      return b - a < ROUNDING_MM ? Stream.empty() : Stream.of(at(a), at(b));
    }

    private double at(double zMm) {
      return startMm + (endMm - startMm) * (zMm - fromMm) / (toMm - fromMm);
    }
  }
}
