package drumline.drawing.part;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Edges that occur more than once are told in one note; only the others get their own mark. */
final class EdgeNotes {

  private final PrintText text;
  private final Map<Edge, Integer> counts = new HashMap<>();
  private final boolean hasBroken;

  EdgeNotes(Part part, PrintText text) {
    this.text = text;
    List<Edge> edges = new ArrayList<>();
    for (OutsideStep step : part.outside()) {
      edges.add(step.frontEdge());
      edges.add(step.backEdge());
    }
    part.frontBore().stream().map(BoreStep::mouthEdge).forEach(edges::add);
    part.backBore().stream().map(BoreStep::mouthEdge).forEach(edges::add);
    edges.stream().filter(EdgeNotes::isMeasured).forEach(e -> counts.merge(e, 1, Integer::sum));
    hasBroken = edges.stream().anyMatch(e -> e.kind() == Edge.Kind.BREAK);
  }

  /** Whether the edge is measured and not one of those told in the note. */
  boolean isOwn(Edge edge) {
    return isMeasured(edge) && !isCommon(edge);
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    common(Edge.Kind.CHAMFER, "chamfers ", notes);
    common(Edge.Kind.RADIUS, "radii ", notes);
    if (hasBroken) {
      notes.add("other edges broken, free of burrs");
    }
    return notes;
  }

  private void common(Edge.Kind kind, String word, List<String> notes) {
    counts.keySet().stream()
        .filter(edge -> edge.kind() == kind && isCommon(edge))
        .forEach(edge -> notes.add(word + text.edge(edge) + " unless marked"));
  }

  /** The most frequent of its kind, if it occurs at least twice. */
  private boolean isCommon(Edge edge) {
    int count = counts.getOrDefault(edge, 0);
    return count > 1
        && counts.entrySet().stream()
            .filter(other -> other.getKey().kind() == edge.kind() && !other.getKey().equals(edge))
            .allMatch(
                other ->
                    other.getValue() < count
                        || (other.getValue() == count && other.getKey().sizeMm() < edge.sizeMm()));
  }

  private static boolean isMeasured(Edge edge) {
    boolean formed = edge.kind() == Edge.Kind.CHAMFER || edge.kind() == Edge.Kind.RADIUS;
    return formed && edge.sizeMm() > 0;
  }
}
