package drumline.cycle.sequential;

import drumline.cycle.clock.OperationTime;
import drumline.cycle.spindle.SpindleState;
import drumline.cycle.spindle.WorkSpindle;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The steps at one spindle, one after another. */
final class SpindleChain {
  private final WorkSpindle spindle;
  private final double nextToolS;
  private final List<Step> steps = new ArrayList<>();
  private @Nullable SpindleState state;
  private @Nullable Task last;
  private double nowS;

  /**
   * @param before what the spindle did last in the cycle before, and with which tool
   */
  SpindleChain(WorkSpindle spindle, double nextToolS, @Nullable Task before) {
    this.spindle = spindle;
    this.nextToolS = nextToolS;
    this.last = before;
    this.state = before == null ? null : before.state();
  }

  void handle(String title, double lengthS) {
    add(Step.Kind.HANDLING, title, "", lengthS);
  }

  void work(Task task) {
    add(Step.Kind.CHANGE, "next tool", task.operation().id(), changeS(task));
    cut(task);
  }

  /** Grips while the parting tool comes, then parts. */
  void part(Task cutOff, double gripS) {
    add(Step.Kind.HANDLING, "grip", "", Math.max(gripS, changeS(cutOff)));
    cut(cutOff);
  }

  List<Step> steps() {
    return steps;
  }

  double lengthS() {
    return nowS;
  }

  /** The next tool comes and the spindle changes at the same time; the longer counts. */
  private double changeS(Task task) {
    double toolS = last != null && last.sameTool(task) ? 0 : nextToolS;
    double spindleS = state == null ? 0 : spindle.changeS(state, task.state());
    return Math.max(toolS, spindleS);
  }

  private void cut(Task task) {
    double lengthS =
        OperationTime.lengthS(task.operation(), task.slide(), task.state().revPerMin());
    add(Step.Kind.OPERATION, task.operation().title(), task.operation().id(), lengthS);
    last = task;
    state = task.state().isFree() ? state : task.state();
  }

  private void add(Step.Kind kind, String title, String operationId, double lengthS) {
    if (lengthS > 0) {
      steps.add(new Step(kind, title, operationId, nowS, nowS + lengthS));
      nowS += lengthS;
    }
  }
}
