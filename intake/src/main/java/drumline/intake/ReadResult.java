package drumline.intake;

import drumline.intake.library.LibraryChange;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What came of reading an inquiry.
 *
 * @param inquiry the inquiry; empty where an error stops the study
 * @param problems everything that is wrong or worth knowing, in the order of the file
 * @param changes figures and entries of the user's own in place of the library's
 * @param places where each element and feature of the part stands, by id: file, line, column and
 *     keys
 */
public record ReadResult(
    Optional<Inquiry> inquiry,
    List<Problem> problems,
    List<LibraryChange> changes,
    Map<String, String> places) {

  /** Copies the collections. */
  public ReadResult {
    problems = List.copyOf(problems);
    changes = List.copyOf(changes);
    places = Map.copyOf(places);
  }
}
