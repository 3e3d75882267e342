package drumline.economics.cost;

import java.math.BigDecimal;

/**
 * A share of a piece's cost.
 *
 * @param kind what it pays for
 * @param amount for one good piece
 */
public record CostShare(Kind kind, BigDecimal amount) {

  /** What a share pays for. */
  public enum Kind {
    /** Bar, less what chips and ends bring. */
    MATERIAL("material, less chips"),
    /** Running hours of the machine. */
    MACHINE("machine"),
    /** People who look after it. */
    LABOUR("labour"),
    /** Edges used up. */
    TOOLS("tools"),
    /** Setting up, shared among the lot. */
    SET_UP("set-up"),
    /** What was spent on pieces that are not good. */
    SCRAP("scrap");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** As a cost table says it. */
    public String words() {
      return words;
    }
  }
}
