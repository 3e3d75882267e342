package drumline.shop.quantity;

import drumline.shop.problem.Problem;

/** What came of reading a quantity: a value, or the reason why there is none. */
public sealed interface Parsed {

  /**
   * A quantity that was understood.
   *
   * @param value amount in the internal unit of its kind, see {@link QuantityKind#internalUnit()};
   *     finite
   * @param kind what it measures
   * @param writtenUnit symbol of the unit it was written in, or that its unit system supplied
   */
  record Value(double value, QuantityKind kind, String writtenUnit) implements Parsed {}

  /**
   * A text that is no quantity of the wanted kind.
   *
   * @param reason why
   * @param found the text as it stands
   * @param allowed what would be right
   * @param hint a sentence that begins with "Maybe", or empty
   */
  record Refused(Reason reason, String found, String allowed, String hint)
      implements Parsed, MoneyParsed {

    /** The refusal as a problem of the user's input, at the place where it stands. */
    public Problem toProblem(String where) {
      return Problem.error(reason.code(), where, found, allowed, hint);
    }
  }

  /** Why a text is no quantity. */
  enum Reason {
    /** No number in front, or one with a decimal comma. */
    NOT_A_NUMBER("not-a-number"),
    /** NaN, infinite, or too large to hold. */
    NOT_FINITE("number-not-finite"),
    /** A bare number where the unit cannot be known. */
    UNIT_MISSING("unit-missing"),
    /** A unit nobody knows. */
    UNIT_UNKNOWN("unit-unknown"),
    /** A unit that measures something else. */
    UNIT_OF_ANOTHER_KIND("unit-of-another-kind");

    private final String code;

    Reason(String code) {
      this.code = code;
    }

    /** Stable name of the problem, for {@link Problem#code()}. */
    public String code() {
      return code;
    }
  }
}
