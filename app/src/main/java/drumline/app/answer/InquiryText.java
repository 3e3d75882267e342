package drumline.app.answer;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An inquiry as text and as a tree.
 *
 * @param id the inquiry
 * @param name its title
 * @param revision revision of the inquiry that it belongs to
 * @param changedAt when it was changed last, ISO 8601 in UTC
 * @param changedBy who changed it
 * @param isArchived whether it is put away
 * @param canUndo whether there is a change to take back
 * @param canRedo whether there is one to make again
 * @param units metric or inch
 * @param text the text, YAML
 * @param tree the same as plain maps, lists and texts; null where it is not YAML
 * @param problems what is wrong or worth knowing
 * @param planningJobId job that plans it now, or null
 */
public record InquiryText(
    String id,
    String name,
    int revision,
    String changedAt,
    String changedBy,
    boolean isArchived,
    boolean canUndo,
    boolean canRedo,
    String units,
    String text,
    @Nullable Map<String, Object> tree,
    List<PlacedProblem> problems,
    @Nullable String planningJobId) {
  /** Copies the lists. */
  public InquiryText {
    problems = List.copyOf(problems);
  }
}
