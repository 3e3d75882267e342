package drumline.shop.material;

import drumline.shop.quantity.FigureTable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * How well a figure of a library is known, and so how far it may be off. The spreads stand in
 * {@code confidence.csv} beside this class; they are common practice, from memory.
 */
public enum Confidence {
  /** Measured on the plant's own machines. */
  MEASURED,
  /** Read in a handbook, standard or tool maker's table that is named. */
  HANDBOOK,
  /** From memory, usual in the trade, not checked against a printed page. */
  MEMORY,
  /** From memory and doubtful, or carried over from another material. */
  WEAK;

  private static final Map<Confidence, Spread> SPREADS = read();

  /** How far a figure of this class may be off. */
  public Spread spread() {
    return Objects.requireNonNull(SPREADS.get(this));
  }

  /** As a reader of a study sees it. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * How far figures may be off to either side.
   *
   * @param speedPct cutting speeds, with the tool life they are for
   * @param feedPct feeds, pitches left out
   * @param forcePct specific cutting force
   */
  public record Spread(double speedPct, double feedPct, double forcePct) {}

  private static Map<Confidence, Spread> read() {
    Map<Confidence, Spread> spreads = new EnumMap<>(Confidence.class);
    for (FigureTable.Row row : FigureTable.read(Confidence.class, "confidence.csv").rows()) {
      Confidence one =
          Arrays.stream(values())
              .filter(c -> c.words().equals(row.text("class")))
              .findFirst()
              .orElseThrow();
      spreads.put(
          one, new Spread(row.figure("speedPct"), row.figure("feedPct"), row.figure("forcePct")));
    }
    return spreads;
  }
}
