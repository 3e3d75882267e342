package drumline.route.rule;

import drumline.shop.material.IsoGroup;
import drumline.shop.operation.OperationKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What operations reach, by kind, material group and diameter: the first row that fits counts.
 *
 * @param rows rows in order of precedence
 */
public record CapabilityTable(List<Capability> rows) {
  private static final String ANY = "*";

  /** Copies the list. */
  public CapabilityTable {
    rows = List.copyOf(rows);
  }

  /** The table that ships with the program. */
  public static CapabilityTable shipped() {
    return new CapabilityTable(
        TabTable.rows("capability.tsv", 9).stream().map(CapabilityTable::row).toList());
  }

  private static Capability row(String[] cells) {
    return new Capability(
        kind(cells[0]).orElseThrow(),
        cells[1].equals(ANY)
            ? Optional.empty()
            : Optional.of(IsoGroup.valueOf(cells[1].toUpperCase(Locale.ROOT))),
        Double.parseDouble(cells[2]),
        Double.parseDouble(cells[3]),
        Integer.parseInt(cells[4]),
        Integer.parseInt(cells[5]),
        Double.parseDouble(cells[6]),
        Double.parseDouble(cells[7]),
        cells[8]);
  }

  /** The kind of operation that a table names, words joined by hyphens. */
  static Optional<OperationKind> kind(String word) {
    return Arrays.stream(OperationKind.values())
        .filter(k -> k.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word))
        .findFirst();
  }

  /** What a kind of operation reaches at a diameter, if the table says so. */
  public Optional<Capability> find(OperationKind kind, IsoGroup group, double diameterMm) {
    return rows.stream()
        .filter(row -> row.kind() == kind)
        .filter(row -> row.group().isEmpty() || row.group().get() == group)
        .filter(row -> diameterMm > row.aboveMm() && diameterMm <= row.toMm())
        .findFirst();
  }

  /** A table in which a kind of operation has other figures for every group and diameter. */
  public CapabilityTable with(Capability first) {
    List<Capability> changed = new ArrayList<>();
    changed.add(first);
    changed.addAll(rows);
    return new CapabilityTable(changed);
  }
}
