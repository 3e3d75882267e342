package drumline.app.view;

import drumline.app.answer.PlacedProblem;
import drumline.app.answer.sheet.PrintAnswer;
import drumline.app.answer.sheet.PrintAnswer.Element;
import drumline.drawing.DrawingUnits;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.svg.Look;
import drumline.intake.ReadResult;
import drumline.shop.inquiry.Inquiry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The print's leaf. */
public final class PrintView {
  private static final List<String> PLACES =
      List.of("outside", "front-bore", "back-bore", "features", "relations");

  private final ReadResult read;
  private final @Nullable Map<String, Object> tree;
  private final List<PlacedProblem> problems;
  private final Map<String, String> idByPath = new HashMap<>();
  private final Map<String, String> placeByPath = new HashMap<>();

  /**
   * The print of a text.
   *
   * @param tree the text as plain maps and lists; null where it is not YAML
   */
  public PrintView(ReadResult read, @Nullable Map<String, Object> tree) {
    this.read = read;
    this.tree = tree;
    this.problems = new ProblemPlaces(read.places()).of(read.problems());
    read.places()
        .forEach(
            (id, place) -> {
              idByPath.put(ProblemPlaces.pathWords(place), id);
              placeByPath.put(ProblemPlaces.pathWords(place), place);
            });
  }

  /** The drawing of an inquiry with the elements marked that have an error. */
  public String svg(Inquiry inquiry, DrawingUnits units) {
    Set<String> wrong =
        problems.stream()
            .filter(problem -> problem.severity().equals("error"))
            .flatMap(problem -> java.util.stream.Stream.ofNullable(problem.elementId()))
            .collect(Collectors.toUnmodifiableSet());
    PartSheet sheet = new PartSheet(units, Look.INSIDE, wrong);
    return PartDrawing.svg(inquiry.part(), inquiry.bar(), sheet);
  }

  /**
   * The answer.
   *
   * @param revision revision of the text
   * @param svg the drawing, or null
   * @param svgRevision revision that it shows, or null
   */
  public PrintAnswer answer(
      int revision, @Nullable String svg, @Nullable Integer svgRevision, DrawingUnits units) {
    return new PrintAnswer(revision, svg, svgRevision, elements(svg, units), problems);
  }

  /** What each element is, by its id. */
  public Map<String, String> words(DrawingUnits units) {
    return elements(null, units).stream()
        .collect(Collectors.toMap(Element::id, Element::words, (one, other) -> one));
  }

  private List<Element> elements(@Nullable String svg, DrawingUnits units) {
    Map<String, String> steps =
        read.inquiry().map(i -> ElementWords.ofSteps(i.part(), units)).orElse(Map.of());
    List<Element> elements = new ArrayList<>();
    if (tree != null && tree.get("part") instanceof Map<?, ?> part) {
      for (String place : PLACES) {
        if (part.get(place) instanceof List<?> list) {
          for (int i = 0; i < list.size(); i++) {
            elements.add(element(place, i, list.get(i), svg, steps));
          }
        }
      }
    }
    return elements;
  }

  private Element element(
      String place, int index, Object item, @Nullable String svg, Map<String, String> steps) {
    Map<String, Object> fields = fields(item);
    String path = "part." + place + "[" + (index + 1) + "]";
    String id =
        idByPath.getOrDefault(
            path, String.valueOf(fields.getOrDefault("id", place + "-" + (index + 1))));
    String kind = String.valueOf(fields.getOrDefault("kind", "step"));
    List<Integer> own = new ArrayList<>();
    for (int i = 0; i < problems.size(); i++) {
      if (id.equals(problems.get(i).elementId())) {
        own.add(i);
      }
    }
    return new Element(
        id,
        place,
        kind,
        steps.getOrDefault(id, ElementWords.ofFields(kind, fields)),
        ProblemPlaces.path(path),
        line(path),
        svg != null && svg.contains("data-element=\"" + id + "\""),
        fields,
        own);
  }

  private int line(String path) {
    String place = placeByPath.getOrDefault(path, "");
    String[] parts = place.split(":", -1);
    return parts.length < 2 ? 1 : Integer.parseInt(parts[1]);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(Object item) {
    return item instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
  }
}
