package drumline.planner.balance;

import java.util.List;

/**
 * Tasks shared among stations.
 *
 * @param cycleMs time of the fullest station
 * @param lowerBoundMs no sharing can have a shorter cycle
 * @param isProvenOptimal true if the cycle equals the bound
 * @param stationOf by task, in the problem's order: its station, 1…M
 * @param elapsedMs time the search took, in ms of the clock
 * @param notes what a person should know about the search, in sentences; empty as a rule
 */
public record BalanceResult(
    int cycleMs,
    int lowerBoundMs,
    boolean isProvenOptimal,
    List<Integer> stationOf,
    long elapsedMs,
    List<String> notes) {
  /** Copies the lists. */
  public BalanceResult {
    stationOf = List.copyOf(stationOf);
    notes = List.copyOf(notes);
  }
}
