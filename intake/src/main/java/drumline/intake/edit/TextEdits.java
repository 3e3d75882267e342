package drumline.intake.edit;

import java.util.List;
import java.util.Map;

/**
 * Applies edits to a text so that comments, order and all that is not edited stay as written. After
 * each edit the text is read again and must say exactly what was asked; if it does not, the edit is
 * refused. Known limits: values behind references, and several blocks on one line, can only be
 * edited as text.
 */
public final class TextEdits {
  private TextEdits() {}

  /**
   * The text after all edits, one after the other.
   *
   * @throws RefusedEditException if one cannot be done; none is then
   */
  public static String apply(String text, List<TextEdit> edits) throws RefusedEditException {
    String current = text;
    for (TextEdit edit : edits) {
      current = apply(current, edit);
    }
    return current;
  }

  private static String apply(String text, TextEdit edit) throws RefusedEditException {
    Map<String, Object> expected =
        PlainTree.of(text)
            .orElseThrow(
                () ->
                    new RefusedEditException(
                        "text-unreadable",
                        "text",
                        "a text that is not YAML",
                        "a readable text: mend it as text first"));
    new PlainEdit(expected).apply(edit);
    String edited;
    try {
      edited = new Splice(text).apply(edit);
    } catch (IndexOutOfBoundsException e) {
      throw cannot(edit);
    }
    if (!PlainTree.of(edited).filter(expected::equals).isPresent()) {
      throw cannot(edit);
    }
    return edited;
  }

  private static RefusedEditException cannot(TextEdit edit) {
    return new RefusedEditException(
        "edit-as-text",
        "path " + edit.path(),
        "a place that cannot be edited on its own as it is written",
        "an edit of the text");
  }
}
