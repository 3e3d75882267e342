package drumline.sheets.content.process;

import drumline.sheets.content.plain.Tone;

/**
 * A figure that can hurt someone, with its caution beside it.
 *
 * @param kind what can happen
 * @param label what the figure is, and where
 * @param figure the figure with unit
 * @param limit what it is held against, with unit
 * @param tone marked where the limit bites
 */
public record SafetyFigure(SafetyKind kind, String label, String figure, String limit, Tone tone) {}
