package drumline.shop.check;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.Relation;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Part;
import drumline.shop.quantity.NearestWord;
import java.util.List;
import java.util.stream.Stream;

/** Every id that a feature or relation refers to is there. */
final class ReferenceCheck {

  private ReferenceCheck() {}

  static void check(Part part, Findings findings) {
    List<String> outside = part.outside().stream().map(OutsideStep::id).toList();
    List<String> bores =
        Stream.concat(part.frontBore().stream(), part.backBore().stream())
            .map(BoreStep::id)
            .toList();
    List<String> steps = Stream.concat(outside.stream(), bores.stream()).toList();
    List<String> features = part.features().stream().map(Feature::id).toList();
    List<String> all = Stream.concat(steps.stream(), features.stream()).toList();
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      require(thread.onElement(), steps, thread.id(), "a step of the part", findings);
    }
    for (Knurl knurl : part.features(Knurl.class)) {
      require(knurl.onElement(), outside, knurl.id(), "an outside step", findings);
    }
    for (Deburring demand : part.features(Deburring.class)) {
      require(demand.ofFeature(), all, demand.id(), "a step or feature", findings);
    }
    for (int i = 0; i < part.relations().size(); i++) {
      Relation relation = part.relations().get(i);
      String name = "relation " + (i + 1);
      require(relation.ofElement(), steps, name, "a step of the part", findings);
      require(relation.toElement(), steps, name, "a step of the part", findings);
    }
  }

  private static void require(
      String wanted, List<String> known, String id, String what, Findings findings) {
    if (!known.contains(wanted)) {
      List<String> nearest = NearestWord.among(wanted, known, 1);
      findings.error(
          "unknown-element",
          id,
          "\"" + wanted + "\"",
          what + ": " + String.join(", ", known),
          nearest.isEmpty() ? "" : "Maybe \"" + nearest.get(0) + "\".");
    }
  }
}
