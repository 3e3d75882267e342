package drumline.economics.cost;

import java.math.BigDecimal;

/**
 * A way of making pieces: what must be spent before the first, and what each costs.
 *
 * @param name what it is called
 * @param fixed spent once: for a lot its set-up, for a year its fixed costs
 * @param perPiece each piece
 */
public record CostLine(String name, BigDecimal fixed, BigDecimal perPiece) {

  /** Cost of so many pieces. */
  public BigDecimal cost(long piecesCount) {
    return fixed.add(perPiece.multiply(BigDecimal.valueOf(piecesCount)));
  }
}
