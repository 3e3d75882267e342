package drumline.sheets.content.process;

/**
 * One operation that must be finished before another begins.
 *
 * @param before operation that comes first
 * @param after operation that follows
 * @param reason why
 */
public record OrderRow(String before, String after, String reason) {}
