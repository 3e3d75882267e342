package drumline.app.ask;

import drumline.intake.ReadResult;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.problem.Problem;
import drumline.shop.problem.Problem.Severity;
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

  /** Everything that is wrong or worth knowing, in the order of the file. */
  public List<Problem> problems() {
    return read.problems();
  }

  /** Whether something in it stops the study. */
  public boolean isWrong() {
    return read.inquiry().isEmpty()
        || read.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }
}
