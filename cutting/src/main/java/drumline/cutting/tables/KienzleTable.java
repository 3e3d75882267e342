package drumline.cutting.tables;

import drumline.cutting.force.KienzleConstants;
import java.util.List;
import java.util.Optional;

/**
 * Published and proposed pairs of kc1.1 and mc by material and family.
 *
 * <p>Source: resource kienzle.csv, [BASIS] 1.1; each row names its own. Pairs of different families
 * must not be mixed.
 */
public final class KienzleTable {
  private static final List<Row> ROWS =
      TableFile.rows("kienzle.csv", 6).stream().map(KienzleTable::row).toList();

  /** Family of a pair. */
  public enum Family {
    /** Older values after Kienzle and Victor, used in German textbooks and chuck calculations. */
    KIENZLE,
    /** Later re-measured values. */
    REMEASURED,
    /** Group values that tool makers print by VDI 3323. */
    VDI_3323,
    /** Our proposal between the families. */
    PROPOSED
  }

  /**
   * One pair.
   *
   * @param material designation, e.g. {@code 11SMn30}
   * @param family family of the pair
   * @param constants the pair
   * @param provenance how far it can be trusted
   * @param source where it stands
   */
  public record Row(
      String material,
      Family family,
      KienzleConstants constants,
      Provenance provenance,
      String source) {}

  private KienzleTable() {}

  /** All rows, by material. */
  public static List<Row> rows() {
    return ROWS;
  }

  /** The pair of a material in a family, if the table has it. */
  public static Optional<Row> findRow(String material, Family family) {
    return ROWS.stream()
        .filter(r -> r.material().equals(material) && r.family() == family)
        .findFirst();
  }

  private static Row row(String[] cells) {
    return new Row(
        cells[0],
        Family.valueOf(cells[1]),
        new KienzleConstants(Double.parseDouble(cells[2]), Double.parseDouble(cells[3])),
        Provenance.valueOf(cells[4]),
        cells[5]);
  }
}
