package drumline.shop.tolerance;

import drumline.shop.quantity.FigureTable;
import java.util.Optional;

/**
 * A table whose rows hold for ranges of nominal size: over one size, up to and including another.
 */
record SizeRanges(FigureTable table) {

  static SizeRanges read(String name) {
    return new SizeRanges(FigureTable.read(SizeRanges.class, name));
  }

  Optional<FigureTable.Row> findRow(double nominalMm) {
    return table.rows().stream()
        .filter(row -> nominalMm > row.figure("over_mm") && nominalMm <= row.figure("up_to_mm"))
        .findFirst();
  }
}
