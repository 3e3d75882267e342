package drumline.sheets.content;

import drumline.sheets.content.plain.Tone;

/**
 * One of the few figures that a reader looks for first.
 *
 * @param label what it is
 * @param value the figure as written
 * @param unit its unit
 * @param note what stands behind it, short
 * @param tone whether it stands out
 */
public record KeyFigure(String label, String value, String unit, String note, Tone tone) {}
