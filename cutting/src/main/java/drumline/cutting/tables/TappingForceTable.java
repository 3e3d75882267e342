package drumline.cutting.tables;

import java.util.List;
import java.util.Optional;

/**
 * Specific force of tapping by group of material, for the torque by pitch.
 *
 * <p>Source: [LUBERO], resource tapping-force.csv. Not to be used as kc1.1 of turning.
 */
public final class TappingForceTable {
  private static final List<Row> ROWS =
      TableFile.rows("tapping-force.csv", 4).stream()
          .map(c -> new Row(c[0], Double.parseDouble(c[1]), Provenance.valueOf(c[2]), c[3]))
          .toList();

  /**
   * One group.
   *
   * @param group name of the group
   * @param specificForceMpa specific force kc
   * @param provenance how far it can be trusted
   * @param source where it stands
   */
  public record Row(String group, double specificForceMpa, Provenance provenance, String source) {}

  private TappingForceTable() {}

  /** All rows. */
  public static List<Row> rows() {
    return ROWS;
  }

  /** The row of a group, if the table has it. */
  public static Optional<Row> findRow(String group) {
    return ROWS.stream().filter(r -> r.group().equals(group)).findFirst();
  }
}
