package drumline.app.job;

import drumline.app.ask.SearchWatch;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One planning job; many threads may look at it. */
final class Job implements SearchWatch {
  /** Where a job is in its life. */
  enum State {
    QUEUED,
    RUNNING,
    DONE,
    CANCELLED,
    FAILED
  }

  private final String id;
  private final JobWish wish;
  private final Clock clock;
  private final Instant queued;
  private final Map<String, JobProgress> progress = new LinkedHashMap<>();
  private final List<JobListener> listeners = new ArrayList<>();
  private State state = State.QUEUED;
  private boolean isCancelled;
  private @Nullable Instant started;
  private @Nullable Instant ended;
  private @Nullable JobResult result;
  private String words = "waiting";

  Job(String id, JobWish wish, Clock clock) {
    this.id = id;
    this.wish = wish;
    this.clock = clock;
    this.queued = clock.instant();
  }

  String id() {
    return id;
  }

  JobWish wish() {
    return wish;
  }

  synchronized State state() {
    return state;
  }

  synchronized boolean isOver() {
    return ended != null;
  }

  synchronized JobAnswer answer(int aheadCount) {
    JobResult came = result;
    return new JobAnswer(
        id,
        wish.inquiryId(),
        state.name().toLowerCase(Locale.ROOT),
        wish.machines(),
        wish.seconds(),
        wish.seed(),
        state == State.QUEUED ? aheadCount : 0,
        queued.toString(),
        started == null ? null : started.toString(),
        ended == null ? null : ended.toString(),
        List.copyOf(progress.values()),
        came == null ? List.of() : came.layoutIds(),
        came == null ? null : came.bestLayoutId().orElse(null),
        words,
        came == null ? List.of() : came.problems());
  }

  /** Listens until the job is over; one that is over already says so at once. */
  synchronized Runnable listen(JobListener listener) {
    if (ended != null) {
      listener.ended(answer(0));
      return () -> {};
    }
    listeners.add(listener);
    return () -> forget(listener);
  }

  private synchronized void forget(JobListener listener) {
    listeners.remove(listener);
  }

  /** Ends it soon; one that has not begun ends at once. */
  synchronized void cancel() {
    isCancelled = true;
    if (state == State.QUEUED) {
      end(State.CANCELLED, "cancelled before it began", null);
    } else if (state == State.RUNNING) {
      words = "ending with the best so far";
    }
  }

  /** Begins; false if it was cancelled before. */
  synchronized boolean begin() {
    if (state != State.QUEUED) {
      return false;
    }
    state = State.RUNNING;
    started = clock.instant();
    words = "planning";
    return true;
  }

  synchronized void done(JobResult came) {
    end(isCancelled ? State.CANCELLED : State.DONE, came.words(), came);
  }

  synchronized void failed(String why) {
    end(State.FAILED, why, null);
  }

  private void end(State how, String why, @Nullable JobResult came) {
    state = how;
    words = why;
    result = came;
    ended = clock.instant();
    JobAnswer answer = answer(0);
    List.copyOf(listeners).forEach(listener -> listener.ended(answer));
    listeners.clear();
  }

  @Override
  public synchronized void progress(
      String machineName, double elapsedS, OptionalDouble bestS, double boundS) {
    JobProgress now =
        new JobProgress(
            machineName,
            rounded(elapsedS),
            bestS.isPresent() ? Double.valueOf(rounded(bestS.getAsDouble())) : null,
            rounded(boundS));
    progress.put(machineName, now);
    if (state == State.RUNNING && !isCancelled) {
      words = "planning on " + machineName;
    }
    List.copyOf(listeners).forEach(listener -> listener.progress(now));
  }

  private static double rounded(double valueS) {
    return BigDecimal.valueOf(valueS).setScale(3, RoundingMode.HALF_UP).doubleValue();
  }

  @Override
  public synchronized boolean isCancelled() {
    return isCancelled;
  }

  /** The inquiry that it plans, while it is not over. */
  synchronized Optional<String> openInquiry() {
    return ended == null ? Optional.of(wish.inquiryId()) : Optional.empty();
  }
}
