package drumline.app.shelf;

import drumline.app.ask.Opened;
import drumline.app.view.ProblemPlaces;
import drumline.drawing.DrawingUnits;
import drumline.economics.triage.Triage;
import drumline.intake.edit.PlainTree;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.problem.Problem.Severity;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A text that was read, with what is asked of it again and again. */
public final class ReadText {
  private final Opened opened;
  private final Optional<Map<String, Object>> tree;
  private @Nullable Triage triage;

  public ReadText(String text, Opened opened) {
    this.opened = opened;
    this.tree = PlainTree.of(text);
  }

  public Opened opened() {
    return opened;
  }

  public Optional<Map<String, Object>> tree() {
    return tree;
  }

  /** The inquiry, if nothing stops its study. */
  public Optional<Inquiry> findInquiry() {
    return opened.isWrong() ? Optional.empty() : opened.findInquiry();
  }

  public ProblemPlaces places() {
    return new ProblemPlaces(opened.read().places());
  }

  public int errorCount() {
    return (int) opened.problems().stream().filter(p -> p.severity() == Severity.ERROR).count();
  }

  /** Whether the piece belongs on a multi-spindle. */
  public synchronized Triage triage() {
    Triage known = triage;
    if (known == null) {
      known = Triage.of(opened.inquiry(), null);
      triage = known;
    }
    return known;
  }

  /** A text under {@code inquiry}, if it stands there. */
  public Optional<String> head(String key) {
    return tree.map(t -> t.get("inquiry"))
        .filter(Map.class::isInstance)
        .map(block -> ((Map<?, ?>) block).get(key))
        .filter(String.class::isInstance)
        .map(value -> ((String) value).strip())
        .filter(value -> !value.isEmpty());
  }

  /** The unit system that the text declares. */
  public DrawingUnits units() {
    return tree.filter(t -> "inch".equals(t.get("units"))).isPresent()
        ? DrawingUnits.INCH
        : DrawingUnits.METRIC;
  }
}
