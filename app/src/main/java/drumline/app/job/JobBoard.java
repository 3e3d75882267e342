package drumline.app.job;

import drumline.app.answer.DeskRefusal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** The queue of planning jobs; so many run at the same time, the others wait. */
public final class JobBoard implements AutoCloseable {
  private static final int MOST_WAITING = 50;
  private static final int MOST_KEPT = 200;
  private static final long CLOSING_S = 20;

  private final PlanningWork work;
  private final Clock clock;
  private final ExecutorService threads;
  private final Map<String, Job> jobs = new LinkedHashMap<>();
  private final List<Consumer<JobAnswer>> watchers = new CopyOnWriteArrayList<>();
  private int last;

  /**
   * An empty board.
   *
   * @param mostParallelCount jobs that run at the same time
   */
  public JobBoard(PlanningWork work, int mostParallelCount, Clock clock) {
    this.work = work;
    this.clock = clock;
    this.threads = Executors.newFixedThreadPool(mostParallelCount, JobBoard::thread);
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "planning");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Puts a job into the queue.
   *
   * @throws DeskRefusal if too many wait already
   */
  public JobAnswer plan(JobWish wish) {
    Job job;
    synchronized (jobs) {
      if (jobs.values().stream().filter(j -> j.state() == Job.State.QUEUED).count()
          >= MOST_WAITING) {
        throw DeskRefusal.of(
            DeskRefusal.Kind.BUSY, MOST_WAITING + " jobs are waiting already; cancel some.");
      }
      last++;
      job = new Job(String.valueOf(last), wish, clock);
      jobs.put(job.id(), job);
      forgetOld();
    }
    tell(job);
    threads.execute(() -> run(job));
    return answer(job);
  }

  private void forgetOld() {
    List<String> over = jobs.values().stream().filter(Job::isOver).map(Job::id).toList();
    for (int i = 0; i < over.size() && jobs.size() > MOST_KEPT; i++) {
      jobs.remove(over.get(i));
    }
  }

  @SuppressWarnings("CatchingUnchecked") // whatever happens, the job ends and says so
  private void run(Job job) {
    if (!job.begin()) {
      return;
    }
    tell(job);
    try {
      job.done(work.plan(job.wish(), job));
    } catch (RuntimeException e) {
      System.getLogger(JobBoard.class.getName())
          .log(System.Logger.Level.ERROR, "planning job " + job.id() + " failed", e);
      job.failed(
          e instanceof DeskRefusal
              ? String.valueOf(e.getMessage())
              : "The program failed; its log says where.");
    }
    tell(job);
  }

  private void tell(Job job) {
    JobAnswer answer = answer(job);
    watchers.forEach(watcher -> watcher.accept(answer));
  }

  /** Tells of every job that is queued, begins or ends, until what is given back is run. */
  public Runnable watch(Consumer<JobAnswer> watcher) {
    watchers.add(watcher);
    return () -> watchers.remove(watcher);
  }

  /** All jobs since the start, newest first. */
  public List<JobAnswer> list() {
    List<Job> all;
    synchronized (jobs) {
      all = new ArrayList<>(jobs.values());
    }
    Collections.reverse(all);
    return all.stream().map(this::answer).toList();
  }

  /**
   * One job.
   *
   * @throws DeskRefusal if there is none of this name
   */
  public JobAnswer job(String id) {
    return answer(find(id));
  }

  /** Listens to a job until it is over, or what is given back is run. */
  public Runnable listen(String id, JobListener listener) {
    return find(id).listen(listener);
  }

  /** Ends a job; the best layout so far is kept. */
  public JobAnswer cancel(String id) {
    Job job = find(id);
    job.cancel();
    tell(job);
    return answer(job);
  }

  /** The job that plans an inquiry now or waits to, if there is one. */
  public Optional<String> findOpen(String inquiryId) {
    synchronized (jobs) {
      return jobs.values().stream()
          .filter(job -> job.openInquiry().filter(inquiryId::equals).isPresent())
          .map(Job::id)
          .findFirst();
    }
  }

  /** How many run now. */
  public int runningCount() {
    synchronized (jobs) {
      return (int) jobs.values().stream().filter(job -> job.state() == Job.State.RUNNING).count();
    }
  }

  private JobAnswer answer(Job job) {
    int ahead;
    synchronized (jobs) {
      ahead =
          (int)
              jobs.values().stream()
                  .takeWhile(other -> other != job)
                  .filter(other -> !other.isOver())
                  .count();
    }
    return job.answer(ahead);
  }

  private Job find(String id) {
    synchronized (jobs) {
      return Optional.ofNullable(jobs.get(id))
          .orElseThrow(
              () -> DeskRefusal.of(DeskRefusal.Kind.MISSING, "There is no job " + id + "."));
    }
  }

  /** Cancels all, waits for them to keep what they found. */
  @Override
  public void close() {
    synchronized (jobs) {
      jobs.values().forEach(Job::cancel);
    }
    threads.shutdown();
    try {
      if (!threads.awaitTermination(CLOSING_S, TimeUnit.SECONDS)) {
        threads.shutdownNow();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
