package drumline.economics.invest;

import drumline.economics.Amount;
import java.math.BigDecimal;
import java.util.List;

/**
 * What future payments are worth today.
 *
 * <p>NPV = −I + Σ CF_t / (1 + i)^t, t = 1, 2, …
 *
 * <ul>
 *   <li>I paid at once; CF_t received at the end of year t, below 0 when paid; same currency
 *   <li>i interest, above −100 %
 * </ul>
 *
 * Source: [SHARMA] ch. 5; answers printed there come from four-digit tables.
 */
public final class NetPresentValue {
  private NetPresentValue() {}

  /**
   * The net present value.
   *
   * @param cashByYear payments at the end of years 1, 2, … in this order
   * @throws IllegalArgumentException if the interest is not above −100 %
   */
  public static BigDecimal of(
      BigDecimal paidAtOnce, List<BigDecimal> cashByYear, double interestPct) {
    if (!(interestPct > -100) || Double.isInfinite(interestPct)) {
      throw new IllegalArgumentException("interestPct: " + interestPct + ", allowed: above -100 %");
    }
    BigDecimal growth = BigDecimal.ONE.add(BigDecimal.valueOf(interestPct / 100));
    BigDecimal value = paidAtOnce.negate();
    BigDecimal factor = BigDecimal.ONE;
    for (BigDecimal cash : cashByYear) {
      factor = factor.multiply(growth, Amount.DIGITS);
      value = value.add(cash.divide(factor, Amount.DIGITS));
    }
    return value;
  }
}
