package drumline.store.measure;

import drumline.store.entry.Standing;
import java.time.Instant;

/**
 * One line in the list of an inquiry's run-offs.
 *
 * @param id number of the run-off
 * @param head what was run
 * @param who the person who began the record
 * @param when when it was begun
 * @param standing open, or archived because it does not count
 * @param measurementCount readings so far
 */
public record RunoffEntry(
    long id, RunoffHead head, String who, Instant when, Standing standing, int measurementCount) {}
