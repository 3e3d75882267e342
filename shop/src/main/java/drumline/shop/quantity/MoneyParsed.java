package drumline.shop.quantity;

/** What came of reading an amount of money: the amount, or a {@link Parsed.Refused}. */
public sealed interface MoneyParsed permits MoneyParsed.Value, Parsed.Refused {

  /**
   * An amount that was understood.
   *
   * @param money the amount, for one of the wanted measure
   * @param per what it pays for
   */
  record Value(Money money, MoneyPer per) implements MoneyParsed {}
}
