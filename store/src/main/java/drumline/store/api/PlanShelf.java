package drumline.store.api;

import drumline.store.entry.Plan;
import drumline.store.entry.PlanEntry;
import drumline.store.entry.PlanHead;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The plans: kept as they came out, never changed. */
public interface PlanShelf {

  /**
   * Keeps a plan.
   *
   * @throws IllegalArgumentException if the inquiry has no such revision, who is blank, or a time
   *     is negative or not a number
   */
  Plan add(PlanHead head, String planJson, @Nullable String studyContent, String who);

  /** The plan, or empty. */
  Optional<Plan> findPlan(long id);

  /** All of an inquiry, newest first; no layout is read. */
  List<PlanEntry> list(long inquiryId);
}
