package drumline.app.study;

import java.util.List;

/**
 * What a search says about a layout.
 *
 * @param lowerBoundS no layout of this route can have a shorter cycle
 * @param isProvenOptimal whether the planner's layout was proven the best
 * @param wallMs how long the search took
 * @param notes what a person should know about the search
 */
public record SearchResult(
    double lowerBoundS, boolean isProvenOptimal, long wallMs, List<String> notes) {

  /** Copies the list. */
  public SearchResult {
    notes = List.copyOf(notes);
  }
}
