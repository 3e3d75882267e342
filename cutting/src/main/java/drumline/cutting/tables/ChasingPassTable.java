package drumline.cutting.tables;

import drumline.cutting.validity.Require;
import java.util.List;

/**
 * Usual number of passes for a chased outside thread in steel, by pitch.
 *
 * <p>Source: from memory, resource chasing-passes.csv; stainless 1–2 more, brass and aluminium 1–2
 * fewer.
 */
public final class ChasingPassTable {
  private static final List<Row> ROWS =
      TableFile.rows("chasing-passes.csv", 3).stream()
          .map(c -> new Row(Double.parseDouble(c[0]), Integer.parseInt(c[1])))
          .toList();

  /**
   * One pitch.
   *
   * @param pitchMm pitch
   * @param passesCount passes with infeed
   */
  public record Row(double pitchMm, int passesCount) {}

  private ChasingPassTable() {}

  /** All rows, by rising pitch. */
  public static List<Row> rows() {
    return ROWS;
  }

  /**
   * Passes of the next larger tabled pitch.
   *
   * @param pitchMm pitch, above 0 to 3
   * @throws IllegalArgumentException if the pitch is outside the table
   */
  public static int passesCount(double pitchMm) {
    Require.positive("pitchMm", pitchMm);
    Require.between("pitchMm", pitchMm, 0, ROWS.get(ROWS.size() - 1).pitchMm());
    return ROWS.stream()
        .filter(r -> r.pitchMm() >= pitchMm - 1e-9)
        .findFirst()
        .orElseThrow()
        .passesCount();
  }
}
