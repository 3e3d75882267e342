package drumline.store.entry;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A planned layout as it was kept: never changed afterwards.
 *
 * @param id number of the plan
 * @param head what was planned, and the figures
 * @param who the person who had it planned
 * @param when to the millisecond
 * @param planJson the layout, to the letter
 * @param studyContent what the study prints, to the letter, or null
 */
public record Plan(
    long id,
    PlanHead head,
    String who,
    Instant when,
    String planJson,
    @Nullable String studyContent) {}
