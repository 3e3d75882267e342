package drumline.drawing.part;

import drumline.drawing.DrawingUnits;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.util.Locale;

/** Dimensions in words, as they stand on the print. */
final class PrintText {

  private final Part part;
  private final DrawingUnits units;

  PrintText(Part part, DrawingUnits units) {
    this.part = part;
    this.units = units;
  }

  String length(double valueMm) {
    return units.length(valueMm);
  }

  String step(OutsideStep step, Bar bar) {
    if (step.surface() == OutsideStep.Surface.BAR) {
      return bar(bar) + ", bar surface";
    }
    return (step.isTaper() ? "taper " : "")
        + diameters(step.startDiameterMm(), step.endDiameterMm())
        + with(step.tolerance())
        + roughness(step.roughnessRaUm());
  }

  String bore(BoreStep step) {
    return diameters(step.startDiameterMm(), step.endDiameterMm())
        + with(step.tolerance())
        + roughness(step.roughnessRaUm());
  }

  String bar(Bar bar) {
    String size =
        switch (bar.shape()) {
          case ROUND -> "Ø" + length(bar.sizeMm());
          case HEXAGON -> "hexagon " + length(bar.sizeMm());
          case SQUARE -> "square " + length(bar.sizeMm());
        };
    String tube = bar.boreMm() > 0 ? " × Ø" + length(bar.boreMm()) + " tube" : "";
    return size + tube + " " + bar.toleranceClass();
  }

  String thread(ScrewThread thread, double elementMm) {
    boolean isFull = thread.lengthMm() >= elementMm - 0.01;
    return thread.size().designation() + (isFull ? "" : ", " + length(thread.lengthMm()) + " long");
  }

  String groove(Groove groove) {
    return "groove "
        + length(groove.widthMm())
        + " × Ø"
        + length(groove.bottomDiameterMm())
        + with(groove.tolerance());
  }

  String flats(Flats flats) {
    String size = length(flats.acrossMm()) + with(flats.tolerance());
    return switch (flats.count()) {
      case 1 -> "flat " + length(flats.acrossMm() / 2) + with(flats.tolerance()) + " from axis";
      case 2 -> "2 flats, " + size + " across";
      case 4 -> "square " + size;
      case 6 -> "hexagon " + size;
      default -> flats.count() + " flats " + size;
    };
  }

  String knurl(Knurl knurl) {
    String form = knurl.form() == Knurl.Form.STRAIGHT ? "straight" : "diamond";
    return form + " knurl, pitch " + length(knurl.pitchMm());
  }

  String hole(CrossHole hole) {
    String size =
        hole.thread() != null
            ? hole.thread().designation()
            : "Ø" + length(hole.diameterMm()) + with(hole.tolerance());
    String reach =
        hole.reach() == CrossHole.Reach.THROUGH ? " through" : " × " + length(hole.depthMm());
    String lean =
        hole.leanDeg() == 0
            ? ""
            : String.format(Locale.ROOT, " at %s°", trimmed(90 - hole.leanDeg()));
    return times(hole.count()) + size + reach + lean;
  }

  String slot(MilledSlot slot) {
    String size = "slot " + length(slot.widthMm()) + with(slot.tolerance());
    String lengthText =
        slot.place() == MilledSlot.Place.OUTSIDE ? " × " + length(slot.lengthMm()) : "";
    return times(slot.count()) + size + lengthText + ", " + length(slot.depthMm()) + " deep";
  }

  String edge(Edge edge) {
    return edge.kind() == Edge.Kind.RADIUS
        ? "R" + length(edge.sizeMm())
        : length(edge.sizeMm()) + " × " + trimmed(edge.angleDeg()) + "°";
  }

  static String times(int count) {
    return count > 1 ? count + "× " : "";
  }

  String with(Tolerance tolerance) {
    String text = units.tolerance(tolerance);
    return text.isEmpty() ? "" : " " + text;
  }

  private String roughness(double raUm) {
    return raUm < part.roughnessRaUm() ? "  Ra " + trimmed(raUm) : "";
  }

  private String diameters(double startMm, double endMm) {
    return startMm == endMm ? "Ø" + length(startMm) : "Ø" + length(startMm) + "–Ø" + length(endMm);
  }

  static String trimmed(double value) {
    return DrawingUnits.METRIC.length(value);
  }
}
