package drumline.app.job;

import org.jspecify.annotations.Nullable;

/**
 * How far a search is.
 *
 * @param machineName machine that is planned
 * @param elapsedS time since its search began
 * @param bestS best cycle so far, or null
 * @param boundS no cycle can be shorter
 */
public record JobProgress(
    String machineName, double elapsedS, @Nullable Double bestS, double boundS) {}
