package drumline.route.thread;

import drumline.route.cut.Cut;
import drumline.route.cut.HoleWork.Lie;
import drumline.route.cut.ThreadWork;
import drumline.route.cut.ThreadWork.Tapping;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.ThreadChoice;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.feature.ScrewThread;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import drumline.shop.tooling.ToolKind;
import java.util.Optional;

/** Threads on the axis: rules {@code thread-roll}, {@code thread-tap}, {@code thread-turn}. */
public final class ThreadMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public ThreadMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    Part part = draft.inquiry().part();
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      Optional<BoreStep> bore = part.findBore(thread.onElement());
      if (bore.isPresent()) {
        inside(thread, bore.get().end());
      } else if (part.findOutside(thread.onElement()).isPresent()) {
        outside(thread);
      } else {
        draft.problem(
            Problem.error(
                "thread-on-nothing",
                thread.id(),
                "thread on " + thread.onElement(),
                "the id of an outside step or a bore step",
                "Maybe the step was renamed."));
      }
    }
  }

  private void outside(ScrewThread thread) {
    if (ThreadChoice.outside(draft, thread) == ScrewThread.Method.ROLL) {
      draft
          .tool(
              thread.id(),
              ToolKind.THREAD_ROLLING,
              CuttingProcess.THREAD_ROLL,
              thread.size().majorMm())
          .ifPresent(
              choice ->
                  new OperationMaker(draft, OperationKind.THREAD_ROLL, thread.id(), "thread-roll")
                      .title("roll " + thread.size().designation())
                      .add(
                          choice,
                          ThreadWork.roll(draft, choice, thread.size(), thread.lengthMm())));
      return;
    }
    turn(thread, true, WorkEnd.FRONT, SlideKind.CROSS);
  }

  private void inside(ScrewThread thread, End end) {
    WorkEnd where = end == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK;
    ScrewThread.Method method = ThreadChoice.inside(draft, thread);
    switch (method) {
      case TAP, FORM_TAP -> tap(thread, where, method);
      default -> turn(thread, false, where, SlideKind.END);
    }
  }

  private void tap(ScrewThread thread, WorkEnd end, ScrewThread.Method method) {
    boolean forms = method == ScrewThread.Method.FORM_TAP;
    draft
        .tool(
            thread.id(),
            forms ? ToolKind.FORM_TAP : ToolKind.TAP,
            forms ? CuttingProcess.FORM_TAP : CuttingProcess.TAP,
            thread.size().majorMm())
        .ifPresent(
            choice -> {
              Cut cut =
                  ThreadWork.tap(
                      draft,
                      choice,
                      thread.size(),
                      thread.lengthMm(),
                      1,
                      Lie.ALONG_AXIS,
                      forms ? Tapping.FORMING : Tapping.CUTTING);
              new OperationMaker(
                      draft,
                      forms ? OperationKind.FORM_TAP : OperationKind.TAP,
                      thread.id(),
                      forms ? "thread-form" : "thread-tap")
                  .title((forms ? "form " : "tap ") + thread.size().designation())
                  .end(end)
                  .from(SlideKind.END)
                  .needs(SpindleCondition.TURNING_ANY, Equipment.LIVE_TOOL)
                  .add(choice, cut);
            });
  }

  private void turn(ScrewThread thread, boolean outside, WorkEnd end, SlideKind slide) {
    draft
        .tool(thread.id(), ToolKind.THREADING, CuttingProcess.THREAD_TURN, thread.size().majorMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.THREAD_TURN, thread.id(), "thread-turn")
                    .title(
                        (outside ? "turn thread " : "turn inside thread ")
                            + thread.size().designation())
                    .end(end)
                    .from(slide)
                    .add(
                        choice,
                        ThreadWork.turn(draft, choice, thread.size(), thread.lengthMm(), outside)));
  }
}
