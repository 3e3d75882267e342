package drumline.shop.standard;

import drumline.shop.quantity.FigureTable;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceClass;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A keyway for a parallel key, high form, for a shaft of a given diameter.
 *
 * <p>Source: [DIN-6885-1] 1968 and [ISO-773] 1969, table 1, in {@code keyways.csv}. Known limits:
 * shafts over 6 mm to 110 mm.
 *
 * @param widthMm width b of key and keyway, mm
 * @param keyHeightMm height h of the key, mm
 * @param shaftDepthMm depth t1 in the shaft, from the shaft's top, mm
 * @param hubDepthMm depth t2 in the hub, from the bore, mm
 * @param depthUpperMm upper deviation of both depths, mm; the lower one is 0
 */
public record Keyway(
    double widthMm,
    double keyHeightMm,
    double shaftDepthMm,
    double hubDepthMm,
    double depthUpperMm) {

  private static final FigureTable TABLE = FigureTable.read(Keyway.class, "keyways.csv");

  /** Which of the two keyways. */
  public enum Place {
    /** In the shaft. */
    SHAFT,
    /** In the hub. */
    HUB
  }

  /** How the key sits. */
  public enum Seat {
    /** Shaft N9, hub JS9. */
    NORMAL,
    /** Shaft and hub P9. */
    CLOSE
  }

  /** The keyway of the standard for a shaft over 6 mm to 110 mm. */
  public static Optional<Keyway> findForShaft(double shaftMm) {
    return TABLE.rows().stream()
        .filter(row -> shaftMm > row.figure("over_mm") && shaftMm <= row.figure("up_to_mm"))
        .findFirst()
        .map(
            row ->
                new Keyway(
                    row.figure("width_mm"),
                    row.figure("height_mm"),
                    row.figure("shaft_depth_mm"),
                    row.figure("hub_depth_mm"),
                    row.figure("depth_upper_mm")));
  }

  /** Tolerance of the width. */
  public Tolerance widthTolerance(Place place, Seat seat) {
    String letters = seat == Seat.CLOSE ? "P" : place == Place.SHAFT ? "N" : "JS";
    return new ToleranceClass(letters, 9).findAt(widthMm).orElseThrow();
  }

  /** Tolerance of either depth. */
  public Tolerance depthTolerance() {
    return new Tolerance("+" + depthUpperMm + " 0", 0, depthUpperMm, OptionalInt.empty());
  }
}
