package drumline.shop.machine;

/**
 * How the drum goes on.
 *
 * @param piecesPerIndexCount finished pieces at each index, 1 or 2
 * @param doubleIndexS time to go on by two positions at once; 0 where the drum cannot
 */
public record Indexing(int piecesPerIndexCount, double doubleIndexS) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the pieces are not 1 or 2, or the time is negative
   */
  public Indexing {
    if (piecesPerIndexCount < 1 || piecesPerIndexCount > 2) {
      throw new IllegalArgumentException(
          "piecesPerIndexCount is " + piecesPerIndexCount + ", allowed: 1 or 2");
    }
    if (!(doubleIndexS >= 0)) {
      throw new IllegalArgumentException(
          "doubleIndexS is " + doubleIndexS + ", allowed: 0 or more");
    }
  }

  /** One piece at each index, by one position. */
  public static Indexing single() {
    return new Indexing(1, 0);
  }
}
