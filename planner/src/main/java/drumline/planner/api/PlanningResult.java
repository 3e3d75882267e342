package drumline.planner.api;

import drumline.planner.audit.AuditReport;
import drumline.planner.model.Layout;
import java.util.List;

/** How planning ended. */
public sealed interface PlanningResult {
  /** Time the search took, in ms of the clock. */
  long elapsedMs();

  /**
   * A layout was found.
   *
   * @param layout best layout found
   * @param cycleMs its cycle time with the index
   * @param lowerBoundMs no layout can have a shorter cycle
   * @param isProvenOptimal true if the cycle equals the bound
   * @param elapsedMs time the search took
   * @param audit independent check of the layout
   * @param notes what a person should know about the search, in sentences; empty as a rule
   */
  record Planned(
      Layout layout,
      int cycleMs,
      int lowerBoundMs,
      boolean isProvenOptimal,
      long elapsedMs,
      AuditReport audit,
      List<String> notes)
      implements PlanningResult {
    /** Copies the list. */
    public Planned {
      notes = List.copyOf(notes);
    }

    /** How far the cycle is above the bound, as a share of the cycle. */
    public double gapRatio() {
      return cycleMs == 0 ? 0 : (cycleMs - lowerBoundMs) / (double) cycleMs;
    }
  }

  /**
   * No layout keeps all rules.
   *
   * @param conflicts rules that cannot hold together, in plain words; without any one of them the
   *     others can, unless a note says that the time was too short to find out
   * @param elapsedMs time the search took
   * @param notes what a person should know about the search
   */
  record Infeasible(List<String> conflicts, long elapsedMs, List<String> notes)
      implements PlanningResult {
    /** Copies the lists. */
    public Infeasible {
      conflicts = List.copyOf(conflicts);
      notes = List.copyOf(notes);
    }
  }

  /**
   * No layout was found, nor a proof that there is none.
   *
   * @param lowerBoundMs no layout can have a shorter cycle
   * @param elapsedMs time the search took
   * @param notes what a person should know about the search
   */
  record Undecided(int lowerBoundMs, long elapsedMs, List<String> notes) implements PlanningResult {
    /** Copies the list. */
    public Undecided {
      notes = List.copyOf(notes);
    }
  }
}
