package drumline.cycle.timeline;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A layout on the clock: what every tool and spindle does from the end of one index to the end of
 * the next.
 *
 * @param positions positions 1…N in order
 * @param back the pick-up spindle's round trip, or null; its times count from the begin of gripping
 * @param workS time from the end of the index until the drum may index again
 * @param indexS index time
 * @param governing position that sets the cycle; one more than the last for the pick-up spindle
 * @param piecesPerIndexCount finished pieces at each index
 */
public record Timeline(
    List<PositionTimeline> positions,
    @Nullable PositionTimeline back,
    double workS,
    double indexS,
    int governing,
    int piecesPerIndexCount) {

  /** Copies the list. */
  public Timeline {
    positions = List.copyOf(positions);
  }

  /** Time from one index to the next, in seconds. */
  public double cycleS() {
    return workS + indexS;
  }

  /** The operation's stretch of time, wherever it is done. */
  public Optional<OperationSpan> findOperation(String operationId) {
    return positions.stream()
        .flatMap(position -> position.operations().stream())
        .filter(span -> span.operationId().equals(operationId))
        .findFirst()
        .or(
            () ->
                back == null
                    ? Optional.empty()
                    : back.operations().stream()
                        .filter(span -> span.operationId().equals(operationId))
                        .findFirst());
  }
}
