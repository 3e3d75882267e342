package drumline.app.study;

import drumline.economics.cost.Payback;
import drumline.economics.cost.Saving;
import drumline.economics.study.Assumptions;
import drumline.economics.study.MoneyStudy;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Today;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The new way against today's.
 *
 * @param saving what a year saves
 * @param payback when the machines are paid back
 */
public record MoneyAgainstToday(Saving saving, Payback payback) {

  /** The comparison, if the inquiry says what a piece costs today. */
  public static Optional<MoneyAgainstToday> find(Inquiry inquiry, MoneyStudy money) {
    Today today = inquiry.today();
    if (today == null) {
      return Optional.empty();
    }
    BigDecimal cost = inquiry.rates().convert(today.costPerPiece(), today.currency());
    Saving saving = Saving.of(money.cost(), cost, inquiry.volumes().perYearCount());
    BigDecimal writeOff = money.writeOffPerYear(Assumptions.usual().writeOffYearsCount());
    return Optional.of(
        new MoneyAgainstToday(saving, Payback.of(money.investment(), saving, writeOff)));
  }
}
