package drumline.sheets.content;

/**
 * Something the study rests on.
 *
 * @param text what is taken for granted
 * @param value its value with unit
 * @param source where it comes from; "from memory" where nobody has checked it
 */
public record AssumptionRow(String text, String value, String source) {}
