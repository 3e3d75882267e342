package drumline.app.answer.money;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When the machines are paid back.
 *
 * @param investment price with options, all machines
 * @param savingPerYear saving in a year
 * @param simpleMonths by the saving alone, or null
 * @param cashMonths with the write-off added back, or null
 * @param words as a sentence
 * @param curve balance month by month
 */
public record PaybackCurve(
    BigDecimal investment,
    BigDecimal savingPerYear,
    @Nullable Long simpleMonths,
    @Nullable Long cashMonths,
    String words,
    List<Point> curve) {
  /** Copies the lists. */
  public PaybackCurve {
    curve = List.copyOf(curve);
  }

  /**
   * The balance after some months.
   *
   * @param monthCount months
   * @param balance still to be paid back below 0
   */
  public record Point(int monthCount, BigDecimal balance) {}
}
