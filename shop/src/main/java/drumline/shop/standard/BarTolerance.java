package drumline.shop.standard;

import drumline.shop.quantity.FigureTable;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceClass;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Size tolerances of bright steel bar: always a class h, so no bar is larger than nominal.
 *
 * <p>Source: [EN-10278] 1999, table 1 and clause 6, in {@code bar-tolerances.csv}. Known limits:
 * sizes over 1 mm to 200 mm; flats, and bar of copper or aluminium alloys, have standards of their
 * own.
 */
public final class BarTolerance {

  private static final FigureTable TABLE =
      FigureTable.read(BarTolerance.class, "bar-tolerances.csv");

  private BarTolerance() {}

  /**
   * Grade of the class h that holds if the order says nothing.
   *
   * @param sizeMm diameter or distance across flats, over 1 mm to 200 mm
   * @return empty where the standard names none, or does not make the bar that way
   */
  public static OptionalInt findUsualGrade(BarSection section, BarFinish finish, double sizeMm) {
    return findRow(section, finish, sizeMm)
        .map(row -> row.text("usual_grade"))
        .filter(grade -> !grade.isEmpty())
        .map(grade -> OptionalInt.of(Integer.parseInt(grade)))
        .orElse(OptionalInt.empty());
  }

  /**
   * The tolerance of bar ordered in a class h of this grade.
   *
   * @param sizeMm diameter or distance across flats, over 1 mm to 200 mm
   * @param grade number of the class: 9 to 12 drawn or turned round, 6 to 12 ground or polished
   *     round, 11 or 12 hexagon and square
   * @return empty where the standard does not make the bar in that class
   */
  public static Optional<Tolerance> find(
      BarSection section, BarFinish finish, double sizeMm, int grade) {
    return findRow(section, finish, sizeMm)
        .filter(row -> grade >= row.figure("finest_grade"))
        .filter(row -> grade <= row.figure("coarsest_grade"))
        .flatMap(row -> new ToleranceClass("h", grade).findAt(sizeMm));
  }

  private static Optional<FigureTable.Row> findRow(
      BarSection section, BarFinish finish, double sizeMm) {
    return TABLE.rows().stream()
        .filter(row -> row.text("section").equals(section.name()))
        .filter(row -> row.text("finish").equals(finish.name()))
        .filter(row -> sizeMm > row.figure("over_mm") && sizeMm <= row.figure("up_to_mm"))
        .findFirst();
  }
}
