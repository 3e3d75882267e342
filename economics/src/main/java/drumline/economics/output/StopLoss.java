package drumline.economics.output;

import drumline.economics.Range;

/**
 * Time that the machine stands for one reason, shared among the pieces.
 *
 * @param reason what it stands for
 * @param perPieceS seconds for one piece cut off, good or not
 */
public record StopLoss(String reason, double perPieceS) {

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if it is below 0
   */
  public StopLoss {
    Range.notNegative("perPieceS", perPieceS);
  }
}
