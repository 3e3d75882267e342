package drumline.app.study;

import drumline.app.layout.LaidOut;
import drumline.app.layout.LayoutBench;
import drumline.app.range.CuttingRange;
import drumline.cycle.timeline.Timeline;
import drumline.economics.study.MoneyStudy;
import drumline.planner.check.TimelineReport;
import drumline.shape.proof.RemovalProof;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.layout.Layout;
import java.util.List;
import java.util.Optional;

/**
 * A layout on one machine with all that follows from it.
 *
 * @param layout places and speeds
 * @param timeline the layout on the clock
 * @param lowerBoundS no layout of this route can have a shorter cycle
 * @param isProvenOptimal whether the planner's layout was proven the best
 * @param planningWallMs how long the search took
 * @param audit independent check of the timeline
 * @param states the workpiece position by position
 * @param proof whether what is removed leaves the part
 * @param money output and cost
 * @param range cycle and cost at both ends of what the cutting figures may be; empty where the
 *     other figures ask for other operations
 * @param notes what a person should know about the search
 */
public record PlannedLayout(
    Layout layout,
    Timeline timeline,
    double lowerBoundS,
    boolean isProvenOptimal,
    long planningWallMs,
    TimelineReport audit,
    WorkpieceStates states,
    RemovalProof proof,
    MoneyStudy money,
    Optional<CuttingRange> range,
    List<String> notes) {

  /** Copies the list. */
  public PlannedLayout {
    notes = List.copyOf(notes);
  }

  /**
   * A layout that was laid out and priced.
   *
   * @param bench where it was laid out
   * @param search what the planner says about it
   * @param range how far cycle and cost may be off, if that is known
   * @throws IllegalArgumentException if its money could not be reckoned
   */
  public static PlannedLayout of(
      LayoutBench bench, LaidOut laid, SearchResult search, Optional<CuttingRange> range) {
    MoneyStudy money =
        laid.money().orElseThrow(() -> new IllegalArgumentException(laid.moneyObstacle()));
    return new PlannedLayout(
        laid.layout(),
        laid.timeline(),
        search.lowerBoundS(),
        search.isProvenOptimal(),
        search.wallMs(),
        laid.audit(),
        laid.states(),
        bench.proof(laid.states()),
        money,
        range,
        search.notes());
  }

  /** Share of the cycle that lies above the bound, in percent. */
  public double gapPct() {
    return Math.max(0, 100 * (timeline.cycleS() - lowerBoundS) / timeline.cycleS());
  }
}
