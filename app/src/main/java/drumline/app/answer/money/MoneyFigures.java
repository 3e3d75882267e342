package drumline.app.answer.money;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a piece costs, against what.
 *
 * @param currency ISO 4217 code of all amounts
 * @param pieceCost cost of a good piece
 * @param shares its parts
 * @param costSvg the parts as a bar
 * @param output pieces and bars
 * @param today today's way, or null
 * @param alternatives other ways of making it
 * @param volumes cost of a year against its volume
 * @param payback payback, or null
 * @param sensitivity which assumption moves it most
 * @param assumptions what nobody said
 */
public record MoneyFigures(
    String currency,
    BigDecimal pieceCost,
    List<ShareAmount> shares,
    String costSvg,
    OutputFigures output,
    @Nullable TodayFigures today,
    List<Alternative> alternatives,
    VolumeCurve volumes,
    @Nullable PaybackCurve payback,
    SwingList sensitivity,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public MoneyFigures {
    shares = List.copyOf(shares);
    alternatives = List.copyOf(alternatives);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * A part of the piece cost.
   *
   * @param kind what it pays for
   * @param words the same in words
   * @param amount for one piece
   */
  public record ShareAmount(String kind, String words, BigDecimal amount) {}

  /**
   * Pieces and bars.
   *
   * @param grossPerHour if nothing ever stopped
   * @param netPerHour good pieces
   * @param loadPct load of the machines
   * @param machinesCount machines needed
   * @param piecesPerBar pieces of a bar
   * @param barYieldPct share of the bar in good pieces
   * @param availabilityPct share without breakdowns
   * @param scrapPct share of scrap
   */
  public record OutputFigures(
      double grossPerHour,
      double netPerHour,
      double loadPct,
      int machinesCount,
      int piecesPerBar,
      double barYieldPct,
      double availabilityPct,
      double scrapPct) {}

  /**
   * Today's way.
   *
   * @param how in words
   * @param cycleS time per piece, or null
   * @param costPerPiece cost
   */
  public record TodayFigures(String how, @Nullable Double cycleS, BigDecimal costPerPiece) {}

  /**
   * A way of making it.
   *
   * @param name short name
   * @param title as a reader knows it
   * @param kind layout, other layout, one after another or today
   * @param cycleS cycle
   * @param lowerBoundS bound
   * @param netPerHour good pieces in an hour
   * @param machinesCount machines needed
   * @param pieceCost cost of a good piece
   * @param investment price with options, all machines
   */
  public record Alternative(
      String name,
      String title,
      String kind,
      @Nullable Double cycleS,
      @Nullable Double lowerBoundS,
      @Nullable Double netPerHour,
      @Nullable Integer machinesCount,
      BigDecimal pieceCost,
      @Nullable BigDecimal investment) {}

  /**
   * Something taken for granted.
   *
   * @param words what
   * @param source where it comes from
   */
  public record Assumption(String words, String source) {}
}
