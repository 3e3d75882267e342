package drumline.cycle.clock;

import drumline.cycle.spindle.SpindleShares;
import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Gives starts to the operations at one spindle: in planned order, each as early as the ones before
 * it allow.
 */
final class PositionSchedule {
  private static final Comparator<Job> PLANNED =
      Comparator.comparingDouble((Job job) -> job.placement().plannedStartS())
          .thenComparing(Job::id);

  private final RouteRules rules;
  private final WorkSpindle spindle;
  private final ToDoubleFunction<SpindleState> firstS;
  private final List<Job> placed = new ArrayList<>();

  /**
   * @param firstS earliest begin of work in a state, if nothing else were done
   */
  PositionSchedule(RouteRules rules, WorkSpindle spindle, ToDoubleFunction<SpindleState> firstS) {
    this.rules = rules;
    this.spindle = spindle;
    this.firstS = firstS;
  }

  /**
   * Places all jobs: always the one planned first among those that wait for none of the others.
   *
   * @throws IllegalArgumentException if order rules make jobs wait for each other
   */
  void placeAll(List<Job> jobs) {
    List<Job> waiting = new ArrayList<>(jobs);
    waiting.sort(PLANNED);
    while (!waiting.isEmpty()) {
      Job next =
          waiting.stream()
              .filter(job -> waiting.stream().noneMatch(o -> rules.mustPrecede(o.id(), job.id())))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "orders make operations wait for each other: "
                              + waiting.stream().map(Job::id).toList()
                              + ", allowed: an order without a circle"));
      waiting.remove(next);
      place(next, 0);
    }
  }

  /** Places a job, not before a moment. */
  Job place(Job job, double notBeforeS) {
    Job first = job.at(Math.max(notBeforeS, earliestS(job)));
    Job chosen = first;
    if (!fits(first)) {
      double[] startsS =
          placed.stream().mapToDouble(Job::endS).filter(t -> t > first.startS()).sorted().toArray();
      for (int k = 0; k < startsS.length && !fits(chosen); k++) {
        chosen = job.at(startsS[k]);
      }
    }
    placed.add(chosen);
    return chosen;
  }

  /** Places a job after everything else has ended and the spindle has changed, or later. */
  Job placeLast(Job job, double notBeforeS) {
    double t = notBeforeS;
    for (Job other : placed) {
      t = Math.max(t, other.endS() + spindle.changeS(other.state(), job.state()));
    }
    return place(job, t);
  }

  /** Jobs with their starts, in the order they were placed. */
  List<Job> placed() {
    return placed;
  }

  /** End of the last job, 0 if there is none. */
  double endS() {
    return placed.stream().mapToDouble(Job::endS).max().orElse(0);
  }

  private double earliestS(Job job) {
    double t = firstS.applyAsDouble(job.state());
    for (Job other : placed) {
      if (other.slide().id().equals(job.slide().id())) {
        t = Math.max(t, other.endS() + job.slide().toolShiftS());
      }
      if (!job.state().agreesWith(other.state())) {
        t = Math.max(t, other.endS() + spindle.changeS(other.state(), job.state()));
      }
      if (rules.mustPrecede(other.id(), job.id()) || rules.keepApart(other.id(), job.id())) {
        t = Math.max(t, other.endS());
      }
    }
    return t;
  }

  /** Whether the sums of shares stay in their limits while the job runs; alone it always fits. */
  private boolean fits(Job job) {
    List<Job> together = placed.stream().filter(job::runsWith).toList();
    return together.stream().allMatch(other -> fitsAt(job, together, other.startS()))
        && fitsAt(job, together, job.startS());
  }

  private boolean fitsAt(Job job, List<Job> together, double momentS) {
    if (momentS < job.startS()) {
      return true;
    }
    List<Job> now = new ArrayList<>();
    for (Job other : together) {
      if (other.startS() <= momentS && momentS < other.endS()) {
        now.add(other);
      }
    }
    if (now.isEmpty()) {
      return true;
    }
    now.add(job);
    double n = speedOf(now);
    double torqueRatio = 0;
    double gripRatio = 0;
    for (Job one : now) {
      torqueRatio += SpindleShares.torqueShareRatio(one.operation().loads(), spindle, n);
      gripRatio += SpindleShares.gripShareRatio(one.operation().loads(), spindle, n);
    }
    return Math.max(torqueRatio, gripRatio) <= 1 + SpindleShares.ROUNDING_RATIO;
  }

  /** Speed of the turning jobs, or else the fastest that a free one is placed with. */
  private static double speedOf(List<Job> jobs) {
    return jobs.stream()
        .filter(job -> !job.state().isFree())
        .mapToDouble(job -> job.state().revPerMin())
        .findFirst()
        .orElseGet(() -> jobs.stream().mapToDouble(job -> job.state().revPerMin()).max().orElse(0));
  }
}
