package drumline.drawing.cost;

import java.math.BigDecimal;

/**
 * One share of a piece's cost.
 *
 * @param label what it is paid for
 * @param amount amount per piece; negative for a credit such as that for chips
 */
public record Share(String label, BigDecimal amount) {}
