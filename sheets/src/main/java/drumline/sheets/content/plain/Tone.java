package drumline.sheets.content.plain;

/** What a reader should do with a figure. */
public enum Tone {
  /** Read it. */
  PLAIN,
  /** It governs, or it is wrong: the one thing that stands out. */
  MARKED
}
