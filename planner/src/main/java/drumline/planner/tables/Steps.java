package drumline.planner.tables;

/** Steps that a search may still take: a measure of effort that does not depend on the clock. */
public final class Steps {
  private long leftCount;

  /** So many steps. */
  public Steps(long mostCount) {
    leftCount = mostCount;
  }

  /** Steps left, 0 or more. */
  public long leftCount() {
    return Math.max(0, leftCount);
  }

  /** Notes steps that were taken. */
  public void take(long count) {
    leftCount -= count;
  }

  /** True once none are left. */
  public boolean areSpent() {
    return leftCount <= 0;
  }
}
