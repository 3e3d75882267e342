package drumline.sheets.content.money;

/**
 * A line of a decision: what, and how much.
 *
 * @param label what it is
 * @param value the figure with unit, or a sentence
 * @param note what stands behind it, or empty
 */
public record MoneyLine(String label, String value, String note) {}
