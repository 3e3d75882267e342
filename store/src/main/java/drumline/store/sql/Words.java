package drumline.store.sql;

/** What every text must be. */
final class Words {
  private Words() {}

  /** The text, which must say something. */
  static String required(String name, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(name + " is blank; allowed: at least one letter");
    }
    return kept(name, text);
  }

  /** The text, which must be one that both databases keep to the letter. */
  static String kept(String name, String text) {
    if (text.indexOf('\0') >= 0) {
      throw new IllegalArgumentException(
          name + " holds the character U+0000; allowed: any other characters");
    }
    for (int index = 0; index < text.length(); index++) {
      char unit = text.charAt(index);
      if (Character.isHighSurrogate(unit)
          && index + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(index + 1))) {
        index++;
      } else if (Character.isSurrogate(unit)) {
        throw new IllegalArgumentException(
            name + " holds half a character at place " + (index + 1) + "; allowed: whole ones");
      }
    }
    return text;
  }
}
