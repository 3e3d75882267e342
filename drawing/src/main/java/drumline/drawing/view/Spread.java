package drumline.drawing.view;

/** Moves labels along a line just far enough that none overlaps the next. */
public final class Spread {

  private Spread() {}

  /**
   * Places with the least squared movement that keep their order and their room.
   *
   * <p>Formula: isotonic regression of the wished places less the rooms before them, by pooling
   * neighbours that violate the order.
   *
   * @param wished wished places, rising
   * @param room least distance between neighbours
   * @return places, in the same order
   */
  public static double[] apply(double[] wished, double room) {
    int count = wished.length;
    double[] sums = new double[count];
    int[] sizes = new int[count];
    int blocks = 0;
    for (int i = 0; i < count; i++) {
      sums[blocks] = wished[i] - i * room;
      sizes[blocks] = 1;
      blocks++;
      while (blocks > 1 && mean(sums, sizes, blocks - 2) > mean(sums, sizes, blocks - 1)) {
        sums[blocks - 2] += sums[blocks - 1];
        sizes[blocks - 2] += sizes[blocks - 1];
        blocks--;
      }
    }
    double[] places = new double[count];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < sizes[block]; i++) {
        places[at] = mean(sums, sizes, block) + at * room;
        at++;
      }
    }
    return places;
  }

  private static double mean(double[] sums, int[] sizes, int block) {
    return sums[block] / sizes[block];
  }
}
