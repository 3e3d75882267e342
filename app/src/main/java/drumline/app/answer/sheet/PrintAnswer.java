package drumline.app.answer.sheet;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The piece as drawing and table.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param svg half-section, or null
 * @param svgRevision revision that the drawing shows, or null
 * @param elements steps, features and relations in the order of the text
 * @param problems what is wrong or worth knowing
 */
public record PrintAnswer(
    int revision,
    @Nullable String svg,
    @Nullable Integer svgRevision,
    List<Element> elements,
    List<PlacedProblem> problems) {
  /** Copies the lists. */
  public PrintAnswer {
    elements = List.copyOf(elements);
    problems = List.copyOf(problems);
  }

  /**
   * One element of the part.
   *
   * @param id its name
   * @param place outside, front-bore, back-bore, features or relations
   * @param kind step, or its kind as in the text
   * @param words what it is in a few words
   * @param path keys and indexes that lead to it
   * @param line line of the text, from 1
   * @param isDrawn whether the drawing marks it
   * @param fields its keys with their texts
   * @param problems indexes into the problems
   */
  public record Element(
      String id,
      String place,
      String kind,
      String words,
      List<Object> path,
      int line,
      boolean isDrawn,
      Map<String, Object> fields,
      List<Integer> problems) {
    /** Copies the lists. */
    public Element {
      path = List.copyOf(path);
      problems = List.copyOf(problems);
    }
  }
}
