package drumline.shop.standard;

import drumline.shop.quantity.FigureTable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A centre hole with a 60° cone, in which a live centre supports the piece.
 *
 * <p>Source: [ISO-6411] 1982, table 1, in {@code centre-holes.csv}; from memory.
 *
 * @param form R curved flank, A plain cone, B cone with guard
 * @param pilotMm diameter of the pilot hole, mm
 * @param coneMm mouth of the 60° cone, mm
 * @param mouthMm diameter at the face, mm: the cone's, or the guard's for form B
 */
public record CentreHole(Form form, double pilotMm, double coneMm, double mouthMm) {

  private static final Pattern DESIGNATION =
      Pattern.compile("(?:ISO\\s*6411\\s*-?\\s*)?([RAB])\\s*(\\d+(?:\\.\\d+)?)\\s*/\\s*([\\d.]+)");
  private static final FigureTable TABLE = FigureTable.read(CentreHole.class, "centre-holes.csv");

  /** Shape of a centre hole. */
  public enum Form {
    /** Curved flank. */
    R,
    /** Plain 60° cone. */
    A,
    /** 60° cone with a 120° guard cone. */
    B
  }

  /** The centre hole of that form and pilot diameter, if the standard has it. */
  public static Optional<CentreHole> find(Form form, double pilotMm) {
    return TABLE.rows().stream()
        .filter(row -> row.figure("pilot_mm") == pilotMm)
        .findFirst()
        .map(
            row ->
                new CentreHole(
                    form,
                    pilotMm,
                    row.figure("cone_mm"),
                    row.figure(form == Form.B ? "guard_mm" : "cone_mm")));
  }

  /** The centre hole a print calls {@code ISO 6411-A4/8.5} or {@code A4/8.5}. */
  public static Optional<CentreHole> find(String designation) {
    Matcher matcher = DESIGNATION.matcher(designation.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    return find(Form.valueOf(matcher.group(1)), Double.parseDouble(matcher.group(2)))
        .filter(hole -> matcher.group(3).equals(plain(hole.mouthMm())));
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
  }

  /** Depth of the 60° cone, mm: (cone − pilot)/(2·tan 30°). */
  public double coneDepthMm() {
    return (coneMm - pilotMm) / (2 * Math.tan(Math.toRadians(30)));
  }
}
