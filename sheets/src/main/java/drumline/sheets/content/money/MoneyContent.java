package drumline.sheets.content.money;

import drumline.economics.bar.BarYield;
import drumline.economics.cost.PieceCost;
import drumline.economics.output.Output;
import drumline.economics.study.Sensitivity;
import drumline.sheets.content.plain.Picture;
import java.util.List;
import java.util.Optional;

/**
 * Output and cost.
 *
 * @param bar what comes out of a bar
 * @param output pieces per hour and year
 * @param cost cost of a good piece
 * @param costBar the cost as a bar, if it was drawn
 * @param decision comparison with today, investment, payback and break-even, line by line
 * @param sensitivity which assumption moves the piece cost most
 */
public record MoneyContent(
    BarYield bar,
    Output output,
    PieceCost cost,
    Optional<Picture> costBar,
    List<MoneyLine> decision,
    Sensitivity sensitivity) {

  /** Copies the list. */
  public MoneyContent {
    decision = List.copyOf(decision);
  }
}
