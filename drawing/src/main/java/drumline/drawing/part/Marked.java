package drumline.drawing.part;

import java.util.Set;

/** Which elements stand in the accent colour: what is wrong, or what is selected. */
record Marked(Set<String> elements) {

  Marked {
    elements = Set.copyOf(elements);
  }

  String classes(String element) {
    return elements.contains(element) ? "element marked" : "element";
  }
}
