package drumline.cutting.validity;

import java.util.ArrayList;
import java.util.List;

/**
 * What must be said beside a computed figure: the ranges of its formula that were left, or nothing.
 *
 * <p>Source: none, the ranges stand at the formulas.
 *
 * @param notes one note for each range that was left, in the order they were found
 */
public record Validity(List<ValidityNote> notes) {
  private static final Validity INSIDE = new Validity(List.of());

  public Validity {
    notes = List.copyOf(notes);
  }

  /** All ranges were kept. */
  public static Validity inside() {
    return INSIDE;
  }

  /**
   * Compares one quantity with its range; a value on the edge is inside.
   *
   * @param quantity shop name of the quantity
   * @param found value, in unit
   * @param from lower end, in unit
   * @param to upper end, in unit
   * @param unit unit as printed
   * @param consequence what leaving the range does to the result
   */
  public static Validity of(
      String quantity, double found, double from, double to, String unit, String consequence) {
    if (found >= from && found <= to) {
      return INSIDE;
    }
    return new Validity(List.of(new ValidityNote(quantity, found, from, to, unit, consequence)));
  }

  /** These notes and the others behind them. */
  public Validity and(Validity other) {
    List<ValidityNote> all = new ArrayList<>(notes);
    all.addAll(other.notes);
    return new Validity(all);
  }

  /** Whether every range was kept. */
  public boolean isInside() {
    return notes.isEmpty();
  }
}
