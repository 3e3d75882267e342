package drumline.app.range;

import java.math.BigDecimal;
import java.util.List;

/**
 * What cycle and piece cost become at both ends of what the cutting figures may be, with every
 * operation in its place.
 *
 * @param best speeds and feeds at their upper ends, cutting force at its lower
 * @param worst speeds and feeds at their lower ends, cutting force at its upper
 */
public record CuttingRange(End best, End worst) {

  /**
   * One end.
   *
   * @param cycleS cycle time
   * @param costPerPiece piece cost in the study's currency
   * @param broken rules that the layout does not keep there, with the figure; none where it holds
   */
  public record End(double cycleS, BigDecimal costPerPiece, List<String> broken) {
    /** Copies the list. */
    public End {
      broken = List.copyOf(broken);
    }
  }

  /** Shortest cycle, in seconds. */
  public double cycleLowS() {
    return Math.min(best.cycleS, worst.cycleS);
  }

  /** Longest cycle, in seconds. */
  public double cycleHighS() {
    return Math.max(best.cycleS, worst.cycleS);
  }

  /** Least piece cost. */
  public BigDecimal costLow() {
    return best.costPerPiece.min(worst.costPerPiece);
  }

  /** Greatest piece cost. */
  public BigDecimal costHigh() {
    return best.costPerPiece.max(worst.costPerPiece);
  }
}
