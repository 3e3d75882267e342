package drumline.shop.part;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.Relation;
import drumline.shop.feature.Feature;
import drumline.shop.tolerance.Tolerance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The piece as the print shows it. z = 0 at the front face, positive toward the collet; cut off at
 * z = length.
 *
 * @param name what the piece is called
 * @param lengthMm length over all
 * @param lengthTolerance tolerance of the length
 * @param roughnessRaUm roughness where an element says nothing, in micrometres
 * @param frontFaceRoughnessRaUm roughness of the front face
 * @param outside steps of the outside, front to back, without gaps
 * @param frontBore steps of the inside reached from the front, from the face inwards
 * @param backBore steps of the inside reached from the back, from the back face inwards
 * @param features everything else
 * @param relations geometrical tolerances between elements
 */
public record Part(
    String name,
    double lengthMm,
    Tolerance lengthTolerance,
    double roughnessRaUm,
    double frontFaceRoughnessRaUm,
    List<OutsideStep> outside,
    List<BoreStep> frontBore,
    List<BoreStep> backBore,
    List<Feature> features,
    List<Relation> relations) {

  /** Copies the lists. */
  public Part {
    outside = List.copyOf(outside);
    frontBore = List.copyOf(frontBore);
    backBore = List.copyOf(backBore);
    features = List.copyOf(features);
    relations = List.copyOf(relations);
  }

  /** The outside step with this id, if there is one. */
  public Optional<OutsideStep> findOutside(String id) {
    return outside.stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /**
   * Where a second or pick-up spindle usually grips: the longest cylinder of the outside, the
   * larger one of two that are as long; empty where the outside is all taper.
   */
  public Optional<OutsideStep> findLongestCylinder() {
    return outside.stream()
        .filter(step -> !step.isTaper())
        .max(
            Comparator.comparingDouble(OutsideStep::lengthMm)
                .thenComparingDouble(OutsideStep::largestDiameterMm));
  }

  /** The bore step with this id, from either end, if there is one. */
  public Optional<BoreStep> findBore(String id) {
    return Stream.concat(frontBore.stream(), backBore.stream())
        .filter(step -> step.id().equals(id))
        .findFirst();
  }

  /** The features of one kind, in the order of the print. */
  public <F extends Feature> List<F> features(Class<F> kind) {
    return features.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
