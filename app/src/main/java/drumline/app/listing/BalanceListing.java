package drumline.app.listing;

import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import java.util.ArrayList;
import java.util.List;

/** A balance as text. */
public final class BalanceListing {
  private BalanceListing() {}

  /** Cycle, bound, and what each position does. */
  public static String text(int positionCount, List<BalanceTask> tasks, BalanceResult result) {
    TextTable table = new TextTable(">position", ">time", ">slack", "operations");
    for (int position = 1; position <= positionCount; position++) {
      List<String> ids = new ArrayList<>();
      long time = 0;
      for (int i = 0; i < tasks.size(); i++) {
        if (result.stationOf().get(i) == position) {
          ids.add(tasks.get(i).id());
          time += tasks.get(i).durationMs();
        }
      }
      table.row(
          String.valueOf(position),
          String.valueOf(time),
          String.valueOf(result.cycleMs() - time),
          String.join(" ", ids));
    }
    String proof =
        result.isProvenOptimal()
            ? "proven the shortest"
            : "not proven; no sharing can be shorter than " + result.lowerBoundMs();
    String notes = result.notes().isEmpty() ? "" : String.join("\n", result.notes()) + "\n";
    return "cycle " + result.cycleMs() + ", " + proof + "\n" + notes + "\n" + table.text();
  }
}
