package drumline.app.answer.money;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cost of a year against its volume.
 *
 * @param perYear the inquiry's own volume
 * @param piecesCount volumes that the lines are reckoned at
 * @param lines ways of making it
 * @param crossings volumes at which two cost the same
 * @param words what the lines contain
 */
public record VolumeCurve(
    long perYear,
    List<Long> piecesCount,
    List<Line> lines,
    List<Crossing> crossings,
    String words) {
  /** Copies the lists. */
  public VolumeCurve {
    piecesCount = List.copyOf(piecesCount);
    lines = List.copyOf(lines);
    crossings = List.copyOf(crossings);
  }

  /**
   * One way.
   *
   * @param name short name
   * @param title as a reader knows it
   * @param fixedPerYear whatever the volume
   * @param perPiece each piece
   * @param costs one for each volume
   */
  public record Line(
      String name,
      String title,
      BigDecimal fixedPerYear,
      BigDecimal perPiece,
      List<BigDecimal> costs) {
    /** Copies the lists. */
    public Line {
      costs = List.copyOf(costs);
    }
  }

  /**
   * Where two cost the same.
   *
   * @param oneName one
   * @param otherName the other
   * @param piecesCount the volume, or null where there is none
   * @param cost cost of the year there, or null
   * @param words as a sentence
   */
  public record Crossing(
      String oneName,
      String otherName,
      @Nullable Long piecesCount,
      @Nullable BigDecimal cost,
      String words) {}
}
