package drumline.planner.api;

import drumline.planner.cpsat.Watch;
import drumline.planner.model.Layout;
import java.util.Optional;
import java.util.function.Predicate;

/** Best layout and bound of a running search; passes each gain on, one at a time. */
final class Search implements Watch {
  private final ProgressListener listener;
  private final Cancel cancel;
  private final Predicate<Layout> allowed;
  private final long startNanos = System.nanoTime();
  private Optional<Layout> best = Optional.empty();
  private int lowerBoundMs;

  /** A search that takes only some layouts. */
  Search(ProgressListener listener, Cancel cancel, Predicate<Layout> allowed) {
    this.allowed = allowed;
    this.listener = listener;
    this.cancel = cancel;
  }

  @Override
  public synchronized void layout(Layout layout) {
    boolean shorter = best.isEmpty() || layout.cycleMs() < best.orElseThrow().cycleMs();
    if (shorter && allowed.test(layout)) {
      best = Optional.of(layout);
      tell();
    }
  }

  @Override
  public synchronized void bound(int newBoundMs) {
    int most = best.map(Layout::cycleMs).orElse(Integer.MAX_VALUE);
    int valid = Math.min(newBoundMs, most);
    if (valid > lowerBoundMs) {
      lowerBoundMs = valid;
      tell();
    }
  }

  private void tell() {
    listener.progress(new ProgressListener.Progress(elapsedMs(), best, lowerBoundMs));
  }

  @Override
  public boolean isCancelled() {
    return cancel.isCancelled();
  }

  synchronized Optional<Layout> best() {
    return best;
  }

  synchronized int lowerBoundMs() {
    return lowerBoundMs;
  }

  synchronized boolean isProven() {
    return best.isPresent() && best.orElseThrow().cycleMs() <= lowerBoundMs;
  }

  long elapsedMs() {
    return (System.nanoTime() - startNanos) / 1_000_000;
  }
}
