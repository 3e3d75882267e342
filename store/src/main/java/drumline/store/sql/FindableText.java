package drumline.store.sql;

import drumline.store.entry.Revision;
import java.util.Locale;

/** What the search by words looks through. */
final class FindableText {
  private FindableText() {}

  /** Name and text of a head, in lower case. */
  static String of(Revision head) {
    return fold(head.name() + "\n" + head.text());
  }

  static String fold(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
