package drumline.app.job;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A planning job as it stands.
 *
 * @param id the job
 * @param inquiryId the inquiry
 * @param state queued, running, done, cancelled or failed
 * @param machines machines asked for; empty for those of the wishes, else the best fit
 * @param seconds effort for each machine
 * @param seed random seed
 * @param aheadCount jobs that run first
 * @param queuedAt when it was asked for, ISO 8601 in UTC
 * @param startedAt when it began, or null
 * @param endedAt when it ended, or null
 * @param progress the last progress of each machine
 * @param layoutIds stored layouts that came of it
 * @param bestLayoutId the cheapest, or null
 * @param words what it does or did, in a sentence
 * @param problems what stands against a layout
 */
public record JobAnswer(
    String id,
    String inquiryId,
    String state,
    List<String> machines,
    double seconds,
    int seed,
    int aheadCount,
    String queuedAt,
    @Nullable String startedAt,
    @Nullable String endedAt,
    List<JobProgress> progress,
    List<String> layoutIds,
    @Nullable String bestLayoutId,
    String words,
    List<PlacedProblem> problems) {

  /** Copies the lists. */
  public JobAnswer {
    machines = List.copyOf(machines);
    progress = List.copyOf(progress);
    layoutIds = List.copyOf(layoutIds);
    problems = List.copyOf(problems);
  }
}
