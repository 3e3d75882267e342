package drumline.cutting.tables;

import drumline.cutting.life.TaylorToolLife;
import java.util.List;

/**
 * Typical constants of Taylor's law by tool material, to begin with.
 *
 * <p>Source: from memory, as widely printed in textbooks, resource taylor.csv; 0.3 mm flank wear.
 * Replace them by what the shop observes ({@link TaylorToolLife#through}).
 */
public final class TaylorTable {
  private static final List<Row> ROWS =
      TableFile.rows("taylor.csv", 6).stream()
          .map(
              c ->
                  new Row(
                      c[0],
                      c[1],
                      new TaylorToolLife(Double.parseDouble(c[2]), Double.parseDouble(c[3])),
                      Provenance.valueOf(c[4]),
                      c[5]))
          .toList();

  /**
   * One pairing.
   *
   * @param toolMaterial tool material
   * @param work group of work material
   * @param life constants
   * @param provenance how far they can be trusted
   * @param source where they stand
   */
  public record Row(
      String toolMaterial,
      String work,
      TaylorToolLife life,
      Provenance provenance,
      String source) {}

  private TaylorTable() {}

  /** All rows. */
  public static List<Row> rows() {
    return ROWS;
  }
}
