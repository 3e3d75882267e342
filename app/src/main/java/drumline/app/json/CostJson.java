package drumline.app.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumline.app.range.CuttingRange;
import drumline.app.study.MoneyAgainstToday;
import drumline.economics.study.MoneyStudy;
import drumline.shop.inquiry.Inquiry;
import java.math.RoundingMode;
import java.util.Optional;

/** Writes the cost of {@code plan.json}; amounts with four decimals. */
final class CostJson {
  private static final int DECIMALS = 4;

  private CostJson() {}

  static void write(
      ObjectNode node, Inquiry inquiry, MoneyStudy money, Optional<CuttingRange> range) {
    node.put("currency", money.cost().currency());
    node.put("perPiece", money.cost().total().setScale(DECIMALS, RoundingMode.HALF_UP));
    range.ifPresent(
        ends -> {
          node.put("perPieceLow", ends.costLow().setScale(DECIMALS, RoundingMode.HALF_UP));
          node.put("perPieceHigh", ends.costHigh().setScale(DECIMALS, RoundingMode.HALF_UP));
        });
    ObjectNode shares = node.putObject("shares");
    money
        .cost()
        .shares()
        .forEach(
            share ->
                shares.put(
                    share.kind().words(), share.amount().setScale(DECIMALS, RoundingMode.HALF_UP)));
    var today = MoneyAgainstToday.find(inquiry, money);
    if (today.isEmpty()) {
      node.putNull("todayPerPiece");
      node.putNull("paybackMonths");
      return;
    }
    node.put(
        "todayPerPiece",
        today.get().saving().todayPerPiece().setScale(DECIMALS, RoundingMode.HALF_UP));
    var months = today.get().payback().simpleMonthsCount();
    if (months.isPresent()) {
      node.put("paybackMonths", PlanJson.round(months.getAsDouble(), 1));
    } else {
      node.putNull("paybackMonths");
    }
  }
}
