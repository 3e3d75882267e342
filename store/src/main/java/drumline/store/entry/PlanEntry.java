package drumline.store.entry;

import java.time.Instant;

/**
 * One line in the list of an inquiry's plans.
 *
 * @param id number of the plan
 * @param head what was planned, and the figures
 * @param who the person who had it planned
 * @param when to the millisecond
 */
public record PlanEntry(long id, PlanHead head, String who, Instant when) {}
