package drumline.cycle.clock;

import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.SpindleSpan;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes what a spindle does, without gaps, from the jobs that it has. */
final class SpindleTrace {
  private final List<SpindleSpan> spans = new ArrayList<>();
  private double nowS;

  /** A spindle that does nothing yet, from a moment on. */
  SpindleTrace(double fromS) {
    nowS = fromS;
  }

  /** Keeps a state until a moment; nothing if that has passed. */
  void keep(SpindleState state, double untilS) {
    add(SpindleSpan.Kind.KEEP, state, untilS);
  }

  /** Changes to a state, now, in a time; nothing if it takes none. */
  void change(SpindleState state, double lengthS) {
    add(SpindleSpan.Kind.CHANGE, state, nowS + lengthS);
  }

  /**
   * The jobs' states with the changes between them; each state is kept until the next is wanted or
   * the end.
   *
   * @param firstChangeS time that the first state takes to reach from now
   */
  void follow(List<Job> jobs, WorkSpindle spindle, double firstChangeS, double endS) {
    List<Job> inOrder = new ArrayList<>(jobs);
    inOrder.sort(Comparator.comparingDouble(Job::startS));
    SpindleState state = null;
    double doneS = nowS;
    for (Job job : inOrder) {
      if (job.state().isFree()) {
        continue;
      }
      if (!job.state().equals(state)) {
        double lengthS = state == null ? firstChangeS : spindle.changeS(state, job.state());
        if (state != null) {
          keep(state, doneS);
        }
        change(job.state(), lengthS);
        state = job.state();
      }
      doneS = Math.max(doneS, job.endS());
    }
    if (state == null && !inOrder.isEmpty()) {
      state = new SpindleState(SpindleCondition.TURNING_ANY, inOrder.get(0).state().revPerMin());
    }
    if (state != null) {
      keep(state, endS);
    }
  }

  List<SpindleSpan> spans() {
    return spans;
  }

  private void add(SpindleSpan.Kind kind, SpindleState state, double untilS) {
    if (untilS > nowS) {
      spans.add(new SpindleSpan(kind, state.condition(), state.revPerMin(), nowS, untilS));
      nowS = untilS;
    }
  }
}
