package drumline.drawing.part;

import drumline.drawing.DrawingUnits;
import drumline.shape.section.BarSection;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.Relation;
import drumline.shop.feature.Deburring;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The notes under a drawing. */
final class PrintNotes {

  private PrintNotes() {}

  static List<String> of(Part part, Bar bar, PrintText text, EdgeNotes edges, DrawingUnits units) {
    List<String> notes = new ArrayList<>();
    String unit = units == DrawingUnits.METRIC ? "millimetres" : "inches";
    notes.add(
        "dimensions in "
            + unit
            + "; Ra "
            + PrintText.trimmed(part.roughnessRaUm())
            + " µm unless marked");
    generalTolerances(part).forEach(tolerance -> notes.add("general tolerances " + tolerance));
    notes.addAll(edges.notes());
    notes.add("bar " + text.bar(bar));
    boolean showsSkin =
        part.outside().stream().anyMatch(s -> s.surface() == OutsideStep.Surface.BAR);
    if (showsSkin && !BarSection.note(bar).isEmpty()) {
      String shape = bar.shape() == Bar.Shape.HEXAGON ? "hexagon" : "square";
      notes.add(shape + " drawn sharp, Ø" + text.length(bar.acrossCornersMm()) + " across corners");
    }
    for (Relation relation : part.relations()) {
      notes.add(
          relation.kind().name().toLowerCase(Locale.ROOT)
              + " "
              + text.length(relation.valueMm())
              + ": "
              + relation.ofElement()
              + " to "
              + relation.toElement());
    }
    part.features(Deburring.class).stream()
        .map(deburring -> "free of burrs: " + deburring.ofFeature())
        .forEach(notes::add);
    return notes;
  }

  private static Set<String> generalTolerances(Part part) {
    Set<String> texts = new TreeSet<>();
    Stream<Tolerance> all =
        Stream.of(
                Stream.of(part.lengthTolerance()),
                part.outside().stream().map(step -> step.tolerance()),
                part.frontBore().stream().map(step -> step.tolerance()),
                part.backBore().stream().map(step -> step.tolerance()))
            .flatMap(stream -> stream);
    all.filter(DrawingUnits::isGeneral).map(Tolerance::text).forEach(texts::add);
    return texts;
  }
}
