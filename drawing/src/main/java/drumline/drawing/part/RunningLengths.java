package drumline.drawing.part;

import drumline.drawing.piece.MilledSection;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.view.Spread;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.HalfSection;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Groove;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Lengths under the piece, all from the front face along one line.
 *
 * <p>Source: [ISO-129-1] running dimensions from a common origin (from memory).
 */
final class RunningLengths {

  private static final double TEXT_MM = 2.5;
  private static final double ROOM_MM = 3.5;
  private static final double SAME_MM = 0.004;

  private final Part part;
  private final PrintText text;
  private final List<Double> places;

  RunningLengths(Part part, PrintText text) {
    this.part = part;
    this.text = text;
    this.places = places(part);
  }

  /** Draws the lengths under a line on the sheet; tells the lowest point. */
  double draw(SvgPen pen, HalfSection lower, ViewFrame frame, double topY) {
    double lineY = topY + 6;
    double labelY = lineY + 5;
    double[] wished = places.stream().mapToDouble(frame::x).toArray();
    double[] labelX = Spread.apply(wished, ROOM_MM);
    pen.open("lengths");
    pen.line("thin", frame.x(0), lineY, frame.x(part.lengthMm()), lineY);
    double lowest = labelY;
    for (int i = 0; i < places.size(); i++) {
      double zMm = places.get(i);
      double x = frame.x(zMm);
      SvgPath path = new SvgPath().move(x, frame.down(surfaceRMm(lower, zMm)) + 0.8);
      path.line(x, lineY + 1).line(labelX[i], labelY - 0.6);
      pen.path("thin", path);
      if (zMm == 0) {
        pen.circle("thin", x, lineY, 0.7);
      } else {
        pen.line("thin", x - 0.9, lineY + 0.9, x + 0.9, lineY - 0.9);
      }
      String words = label(zMm);
      pen.upText("", labelX[i] + 0.9, labelY, TEXT_MM, Anchor.END, words);
      lowest = Math.max(lowest, labelY + TextWidth.of(words, TEXT_MM));
    }
    pen.close();
    return lowest;
  }

  private String label(double zMm) {
    return zMm == part.lengthMm()
        ? text.length(zMm) + text.with(part.lengthTolerance())
        : text.length(zMm);
  }

  private static double surfaceRMm(HalfSection lower, double zMm) {
    return Math.max(
        MilledSection.topRMm(lower, zMm - 1e-4), MilledSection.topRMm(lower, zMm + 1e-4));
  }

  private static List<Double> places(Part part) {
    TreeSet<Double> all = new TreeSet<>();
    all.add(0.0);
    for (OutsideStep step : part.outside()) {
      all.add(step.toZMm());
    }
    for (Feature feature : part.features()) {
      if (feature instanceof CrossHole hole) {
        all.add(hole.zMm());
      } else if (feature instanceof Groove groove && groove.place() == Groove.Place.OUTSIDE) {
        all.add(groove.atMm());
      } else {
        FlagTexts.span(feature)
            .ifPresent(
                span -> {
                  all.add(span.fromMm());
                  all.add(span.toMm());
                });
      }
    }
    all.removeIf(zMm -> Math.abs(zMm - part.lengthMm()) < SAME_MM || zMm > part.lengthMm());
    all.add(part.lengthMm());
    List<Double> places = new ArrayList<>();
    for (double zMm : all) {
      if (places.isEmpty() || zMm - places.get(places.size() - 1) > SAME_MM) {
        places.add(zMm);
      }
    }
    return places;
  }
}
