package drumline.economics.cost;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The quantity at which two ways of making pieces cost the same.
 *
 * <p>N = (F2 − F1) / (k1 − k2).
 *
 * <ul>
 *   <li>F1, F2 fixed costs; k1, k2 costs per piece; same currency
 *   <li>N pieces of a lot, or of a year, as the fixed costs are
 * </ul>
 *
 * Source: [LEMBKE], [SHARMA] ch. 5.
 *
 * @param piecesCount the quantity; empty when one way is the cheaper at any
 * @param words what it means, as a sentence
 */
public record BreakEven(OptionalDouble piecesCount, String words) {

  /** The quantity between two ways. */
  public static BreakEven between(CostLine one, CostLine other) {
    BigDecimal fixed = other.fixed().subtract(one.fixed());
    BigDecimal perPiece = one.perPiece().subtract(other.perPiece());
    if (fixed.signum() == 0 && perPiece.signum() == 0) {
      return new BreakEven(OptionalDouble.empty(), "Both cost the same at any quantity.");
    }
    if (fixed.signum() * perPiece.signum() <= 0) {
      boolean oneCheaper = fixed.signum() > 0 || perPiece.signum() < 0;
      return new BreakEven(
          OptionalDouble.empty(),
          (oneCheaper ? one : other).name() + " costs less at any quantity.");
    }
    double pieces = fixed.doubleValue() / perPiece.doubleValue();
    CostLine above = perPiece.signum() > 0 ? other : one;
    return new BreakEven(
        OptionalDouble.of(pieces),
        String.format(
            Locale.ROOT, "From %,.0f pieces on %s costs less.", Math.ceil(pieces), above.name()));
  }
}
