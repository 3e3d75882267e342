package drumline.shop.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes a quantity for people, in metric or inch units, so that it can be read again. */
public final class QuantityWriter {

  private QuantityWriter() {}

  /**
   * Writes a quantity with all its digits, so that reading it again gives the same value to within
   * rounding of the last binary digit.
   *
   * @param value amount in the internal unit of the kind; finite
   * @throws IllegalArgumentException if value is NaN or infinite
   */
  public static String exact(double value, QuantityKind kind, UnitSystem system) {
    requireFinite(value);
    Unit unit = UnitTable.get().shown(kind, system);
    return text(BigDecimal.valueOf(unit.fromInternal(value)), unit);
  }

  /**
   * Writes a quantity rounded to a number of significant digits, without trailing zeros.
   *
   * @param value amount in the internal unit of the kind; finite
   * @param significantCount digits to keep, 1 to 15
   * @throws IllegalArgumentException if value is NaN or infinite, or significantCount outside 1 to
   *     15
   */
  public static String rounded(
      double value, QuantityKind kind, UnitSystem system, int significantCount) {
    requireFinite(value);
    if (significantCount < 1 || significantCount > 15) {
      throw new IllegalArgumentException(
          "significantCount is " + significantCount + "; allowed: 1 to 15");
    }
    Unit unit = UnitTable.get().shown(kind, system);
    BigDecimal amount = BigDecimal.valueOf(unit.fromInternal(value));
    return text(amount.round(new MathContext(significantCount)), unit);
  }

  /** Symbol of the unit in which a kind is written in a unit system. */
  public static String unit(QuantityKind kind, UnitSystem system) {
    return UnitTable.get().shown(kind, system).symbol();
  }

  private static String text(BigDecimal amount, Unit unit) {
    BigDecimal plain = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
    return plain.toPlainString() + " " + unit.symbol();
  }

  private static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value is " + value + "; allowed: finite numbers");
    }
  }
}
