package drumline.shape.clearance;

import java.util.List;

/**
 * What meets what.
 *
 * @param meetings worst place of each pair that meets, by position and time
 * @param pairCount pairs that were looked at
 */
public record ClearanceReport(List<Meeting> meetings, int pairCount) {

  /** Copies the list. */
  public ClearanceReport {
    meetings = List.copyOf(meetings);
  }

  /** Whether nothing meets. */
  public boolean isClear() {
    return meetings.isEmpty();
  }
}
