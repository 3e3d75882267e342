package drumline.app.view;

import drumline.drawing.DrawingUnits;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says in a few words what each element of a part is. */
final class ElementWords {
  private static final List<String> TELLING =
      List.of("form", "size", "text", "diameter", "across", "width", "pitch", "of", "to", "value");

  private final Map<String, String> words = new HashMap<>();
  private final DrawingUnits units;

  private ElementWords(DrawingUnits units) {
    this.units = units;
  }

  /** Words of the steps of a part by id. */
  static Map<String, String> ofSteps(Part part, DrawingUnits units) {
    ElementWords all = new ElementWords(units);
    for (OutsideStep step : part.outside()) {
      String size =
          step.surface() == OutsideStep.Surface.BAR
              ? "bar's own surface"
              : all.size(step.startDiameterMm(), step.endDiameterMm(), step.tolerance());
      all.step(step.id(), size, step.lengthMm(), "long");
    }
    part.frontBore().forEach(all::bore);
    part.backBore().forEach(all::bore);
    return all.words;
  }

  private void bore(BoreStep step) {
    String size = size(step.startDiameterMm(), step.endDiameterMm(), step.tolerance());
    step(step.id(), size, step.lengthMm(), "deep");
  }

  private void step(String id, String size, double lengthMm, String how) {
    words.put(id, size + ", " + units.lengthWithUnit(lengthMm) + " " + how);
  }

  private String size(double startMm, double endMm, Tolerance tolerance) {
    String toleranceWords = units.tolerance(tolerance);
    String end = startMm == endMm ? "" : " to Ø" + units.length(endMm);
    return "Ø"
        + units.length(startMm)
        + end
        + (toleranceWords.isEmpty() ? "" : " " + toleranceWords);
  }

  /** Words of any element from its keys, as they stand in the text. */
  static String ofFields(String kind, Map<String, Object> fields) {
    String telling =
        TELLING.stream()
            .filter(key -> fields.get(key) instanceof String)
            .limit(2)
            .map(key -> String.valueOf(fields.get(key)))
            .collect(Collectors.joining(" "));
    return telling.isEmpty() ? kind : kind + " " + telling;
  }
}
