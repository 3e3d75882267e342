package drumline.shop.quantity;

import java.util.List;

/**
 * A unit a person may write for one kind of quantity.
 *
 * @param kind the kind it measures
 * @param symbol how we write it
 * @param aliases other ways people write it
 * @param factor how many internal units of the kind one of it is, above 0
 */
record Unit(QuantityKind kind, String symbol, List<String> aliases, double factor) {

  Unit {
    aliases = List.copyOf(aliases);
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException("factor is " + factor + "; allowed: above 0");
    }
  }

  double toInternal(double amount) {
    return amount * factor;
  }

  double fromInternal(double internal) {
    return internal / factor;
  }
}
