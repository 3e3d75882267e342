package drumline.shop.standard;

import drumline.shop.quantity.FigureTable;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A groove at the end of a metric thread, so that the tool can run out.
 *
 * <p>Source: [DIN-76-1] 2004, tables 1 to 3, in {@code thread-reliefs.csv}; from memory.
 *
 * @param form letter of the form: A, B external regular and short; C, D internal regular and short
 * @param diameterMm diameter of the groove's bottom, mm; external h13, internal H13
 * @param widthMinMm least length of the cylindrical bottom, mm
 * @param widthMaxMm greatest length of the whole groove, mm
 * @param radiusMm radius in the corner, mm
 */
public record ThreadRelief(
    char form, double diameterMm, double widthMinMm, double widthMaxMm, double radiusMm) {

  private static final FigureTable TABLE =
      FigureTable.read(ThreadRelief.class, "thread-reliefs.csv");

  /** How much room the groove may take. */
  public enum Room {
    /** The usual groove. */
    REGULAR,
    /** For where there is no room. */
    SHORT
  }

  /**
   * The groove behind an external thread.
   *
   * @param majorMm major diameter, above 0, mm
   * @param pitchMm pitch of the standard, 0.2 to 6 mm
   * @return empty if the standard has no such pitch, or the thread is too small for the groove
   */
  public static Optional<ThreadRelief> findExternal(double majorMm, double pitchMm, Room room) {
    String form = room == Room.REGULAR ? "a" : "b";
    return findRow(pitchMm)
        .map(row -> relief(form, row, majorMm - row.figure("below_mm")))
        .filter(relief -> relief.diameterMm() > 0);
  }

  /**
   * The groove at the bottom of an internal thread.
   *
   * @param majorMm major diameter, above 0, mm
   * @param pitchMm pitch of the standard, 0.2 to 6 mm
   * @return empty if the standard has no such pitch
   */
  public static Optional<ThreadRelief> findInternal(double majorMm, double pitchMm, Room room) {
    String form = room == Room.REGULAR ? "c" : "d";
    return findRow(pitchMm).map(row -> relief(form, row, majorMm + row.figure("above_mm")));
  }

  /**
   * How far a blind hole must go on behind the last full thread, mm, where there is no groove.
   *
   * @param pitchMm pitch of the standard, 0.2 to 6 mm
   */
  public static OptionalDouble findBlindOverrunMm(double pitchMm) {
    return findRow(pitchMm).map(row -> row.findFigure("blind_mm")).orElse(OptionalDouble.empty());
  }

  private static Optional<FigureTable.Row> findRow(double pitchMm) {
    return TABLE.rows().stream().filter(row -> row.figure("pitch_mm") == pitchMm).findFirst();
  }

  private static ThreadRelief relief(String form, FigureTable.Row row, double diameterMm) {
    return new ThreadRelief(
        Character.toUpperCase(form.charAt(0)),
        Math.round(diameterMm * 1e6) / 1e6,
        row.figure(form + "_min_mm"),
        row.figure(form + "_max_mm"),
        row.figure("radius_mm"));
  }
}
