package drumline.app.view;

import drumline.app.answer.PlacedProblem;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds the line, the keys and the element of the part that a problem is about. */
public final class ProblemPlaces {
  private static final Pattern PLACE = Pattern.compile("(?s).*?:(\\d+):(\\d+)(?: (\\S+))?.*");
  private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)]");

  private final Map<String, String> places;

  /**
   * Places of one inquiry.
   *
   * @param places where each element stands, by id
   */
  public ProblemPlaces(Map<String, String> places) {
    this.places = Map.copyOf(places);
  }

  /** The problems with their places. */
  public List<PlacedProblem> of(List<Problem> problems) {
    return problems.stream().map(this::of).toList();
  }

  private PlacedProblem of(Problem problem) {
    String element = element(problem.where());
    String where = problem.where();
    Matcher matcher = PLACE.matcher(where);
    if (!matcher.matches() && element != null) {
      matcher = PLACE.matcher(places.getOrDefault(element, ""));
    }
    boolean isPlaced = matcher.matches();
    return new PlacedProblem(
        problem.code(),
        problem.severity().name().toLowerCase(Locale.ROOT),
        problem.found() + "; allowed: " + problem.allowed(),
        where,
        problem.found(),
        problem.allowed(),
        problem.hint(),
        isPlaced ? Integer.valueOf(matcher.group(1)) : null,
        isPlaced ? Integer.valueOf(matcher.group(2)) : null,
        isPlaced && matcher.group(3) != null ? path(matcher.group(3)) : null,
        element);
  }

  /** Keys and indexes from 0 of a path as problems write it, indexes from 1. */
  static List<Object> path(String words) {
    List<Object> path = new ArrayList<>();
    Matcher matcher = STEP.matcher(words);
    while (matcher.find()) {
      path.add(
          matcher.group(1) != null ? matcher.group(1) : Integer.parseInt(matcher.group(2)) - 1);
    }
    return path;
  }

  /** Path in words of the element with this id, e.g. {@code part.outside[2]}; empty if unknown. */
  static String pathWords(String place) {
    Matcher matcher = PLACE.matcher(place);
    return matcher.matches() && matcher.group(3) != null ? matcher.group(3) : "";
  }

  private @Nullable String element(String where) {
    String path = pathWords(where);
    for (Map.Entry<String, String> entry : places.entrySet()) {
      String own = pathWords(entry.getValue());
      boolean isWithin =
          !own.isEmpty()
              && (path.equals(own) || path.startsWith(own + ".") || path.startsWith(own + "["));
      if (isWithin || where.equals(entry.getKey()) || where.endsWith("(" + entry.getKey() + ")")) {
        return entry.getKey();
      }
    }
    return null;
  }
}
