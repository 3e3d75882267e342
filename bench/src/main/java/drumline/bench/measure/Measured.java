package drumline.bench.measure;

/**
 * One line of the ledger.
 *
 * @param caseName what was measured
 * @param median the figure with its unit, the median where there are several
 * @param ratio the figure against what it is compared with; a dash where there is nothing
 * @param bar what was asked for
 * @param isMet whether the bar is met
 */
public record Measured(String caseName, String median, String ratio, String bar, boolean isMet) {

  /** The same without anything to compare with. */
  public static Measured of(String caseName, String median, String bar, boolean isMet) {
    return new Measured(caseName, median, "-", bar, isMet);
  }
}
