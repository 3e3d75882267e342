package drumline.planner.stage;

/** The shortest time of a set of tasks in a stage, or a time that it cannot be below. */
final class ShortestTimes {
  private final PositionSearch search;

  ShortestTimes(StageTables stage) {
    search = new PositionSearch(stage);
  }

  /**
   * Shortest time.
   *
   * @param set tasks as bits
   * @param leastMs a time that it cannot be below
   * @param limitMs times above are of no interest
   * @return the time, or less where the search was given up; above the limit if too long
   */
  int shortestMs(long set, int leastMs, int limitMs) {
    int found = limitMs + 1;
    int least = leastMs;
    int trial = limitMs;
    while (least < found) {
      PositionSearch.Answer answer = search.search(set, trial);
      if (answer == PositionSearch.Answer.UNKNOWN) {
        return least;
      }
      if (answer == PositionSearch.Answer.TOO_LONG) {
        least = trial + 1;
      } else {
        found = search.madeMs();
      }
      trial = found - 1;
    }
    return found;
  }
}
