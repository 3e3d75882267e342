package drumline.store.measure;

import java.math.BigDecimal;

/**
 * One reading of one characteristic on one piece.
 *
 * @param characteristic name or balloon number on the print
 * @param spindle the spindle that made the piece, from 1
 * @param piece the piece of that spindle, from 1
 * @param value the reading with the digits that the gauge gave
 * @param unit its unit, e.g. mm, µm, deg
 */
public record Measurement(
    String characteristic, int spindle, int piece, BigDecimal value, String unit) {}
