package drumline.app.ask;

import drumline.intake.ReadResult;
import drumline.intake.library.LibraryChange;
import drumline.route.rule.PracticeReading;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.problem.Problem;
import drumline.shop.problem.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An inquiry that was opened.
 *
 * @param read what came of reading it
 */
public record Opened(ReadResult read) {

  /** The inquiry; empty where an error stops the study. */
  public Optional<Inquiry> findInquiry() {
    return read.inquiry();
  }

  /**
   * The inquiry.
   *
   * @throws IllegalStateException if an error stops the study
   */
  public Inquiry inquiry() {
    return read.inquiry().orElseThrow(() -> new IllegalStateException("the inquiry has errors"));
  }

  /** Everything that is wrong or worth knowing: of the file in its order, then of the practice. */
  public List<Problem> problems() {
    List<Problem> all = new ArrayList<>(read.problems());
    practice().ifPresent(practice -> all.addAll(practice.problems()));
    return all;
  }

  /** Figures, entries and rules of the user's own in place of what ships. */
  public List<LibraryChange> changes() {
    List<LibraryChange> all = new ArrayList<>(read.changes());
    practice()
        .ifPresent(
            practice ->
                practice.changes().stream()
                    .map(c -> new LibraryChange(c.what(), c.was(), c.now(), c.where()))
                    .forEach(all::add));
    return all;
  }

  private Optional<PracticeReading> practice() {
    return read.inquiry().map(inquiry -> PracticeReading.of(inquiry.overrides()));
  }

  /** Whether something in it stops the study. */
  public boolean isWrong() {
    return read.inquiry().isEmpty()
        || problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }
}
