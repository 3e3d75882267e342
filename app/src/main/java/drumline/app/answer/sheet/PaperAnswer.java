package drumline.app.answer.sheet;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Sheets that can be handed over.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param previewHref sheet to show in a frame, or null
 * @param sheets sheets
 * @param problems what is wrong or worth knowing
 */
public record PaperAnswer(
    int revision, @Nullable String previewHref, List<Sheet> sheets, List<PlacedProblem> problems) {
  /** Copies the lists. */
  public PaperAnswer {
    sheets = List.copyOf(sheets);
    problems = List.copyOf(problems);
  }

  /**
   * One sheet.
   *
   * @param name file name
   * @param title what it is
   * @param mediaType media type
   * @param state ready, unplanned or missing
   * @param href address, or null
   * @param words what it is for
   */
  public record Sheet(
      String name,
      String title,
      String mediaType,
      String state,
      @Nullable String href,
      String words) {}
}
