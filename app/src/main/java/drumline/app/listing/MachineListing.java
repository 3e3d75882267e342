package drumline.app.listing;

import drumline.app.report.AlternativeTable;
import drumline.app.study.MachineStudy;
import drumline.sheets.content.money.ComparisonTable;
import java.util.ArrayList;
import java.util.List;

/** The same piece on several machines, side by side. */
public final class MachineListing {
  private MachineListing() {}

  /** One line for each machine. */
  public static String text(List<MachineStudy> studies) {
    ComparisonTable comparison = AlternativeTable.machines(studies);
    List<String> heads = new ArrayList<>();
    heads.add("machine");
    comparison.lines().forEach(line -> heads.add(">" + line));
    TextTable table = new TextTable(heads.toArray(String[]::new));
    for (ComparisonTable.Column column : comparison.columns()) {
      List<String> cells = new ArrayList<>();
      cells.add(column.title());
      cells.addAll(column.values());
      table.row(cells.toArray(String[]::new));
    }
    return table.text();
  }
}
