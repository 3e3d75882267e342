package drumline.app.shelf;

import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A revision as it is kept: the inquiry's text, to the letter, and the layout that was the present
 * one, so that undo covers both. The layout stands behind the end of the YAML document, where no
 * reader of the text looks.
 *
 * @param text the inquiry
 * @param layoutId the present layout, if there is one
 */
public record KeptText(String text, OptionalLong layoutId) {
  private static final String MARK = "\n... # layout ";
  private static final Pattern KEPT = Pattern.compile("(?s)(.*)\\n\\.\\.\\. # layout (\\d+|none)");

  /** Of a text that was kept; a text without a layout behind it is an inquiry alone. */
  public static KeptText of(String kept) {
    Matcher matcher = KEPT.matcher(kept);
    if (!matcher.matches()) {
      return new KeptText(kept, OptionalLong.empty());
    }
    String id = matcher.group(2);
    return new KeptText(
        matcher.group(1),
        id.equals("none") ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(id)));
  }

  /** As it is kept. */
  public String kept() {
    return text + MARK + (layoutId.isPresent() ? String.valueOf(layoutId.getAsLong()) : "none");
  }

  public KeptText withText(String newText) {
    return new KeptText(newText, layoutId);
  }

  public KeptText withLayout(long newLayoutId) {
    return new KeptText(text, OptionalLong.of(newLayoutId));
  }
}
