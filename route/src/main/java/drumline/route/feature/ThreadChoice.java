package drumline.route.feature;

import drumline.route.draft.RouteDraft;
import drumline.shop.contour.BoreStep;
import drumline.shop.feature.ScrewThread;
import drumline.shop.material.CuttingProcess;
import drumline.shop.material.Material;
import drumline.shop.material.Material.ChipForm;
import drumline.shop.part.Part;
import drumline.shop.tooling.ToolKind;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which way a thread is made: rules {@code thread-roll}, {@code thread-tap}, {@code thread-form}.
 */
public final class ThreadChoice {
  private ThreadChoice() {}

  /** The rolled thread on an outside step, if there is one. */
  public static Optional<ScrewThread> rolledOn(RouteDraft draft, String stepId) {
    return draft.inquiry().part().features(ScrewThread.class).stream()
        .filter(thread -> thread.onElement().equals(stepId))
        .filter(thread -> outside(draft, thread) == ScrewThread.Method.ROLL)
        .findFirst();
  }

  /** How an outside thread is made. */
  public static ScrewThread.Method outside(RouteDraft draft, ScrewThread thread) {
    if (thread.method() != ScrewThread.Method.AUTO) {
      return thread.method();
    }
    Material material = draft.inquiry().material();
    boolean flows =
        material.findWindow(CuttingProcess.THREAD_ROLL).isPresent()
            && material.elongationPct() >= draft.allowance("rollElongation")
            && material.tensileMpa() <= draft.allowance("rollStrength");
    double core = thread.size().majorMm() - 1.2269 * thread.size().pitchMm();
    boolean stiff = boreBehind(draft, thread) <= draft.allowance("rollWall") * core;
    boolean straight = thread.size().start().rollBlankMm().isPresent();
    boolean kinds =
        draft.inquiry().tools().stream().anyMatch(f -> f.kind() == ToolKind.THREAD_ROLLING);
    boolean rolls = draft.uses("thread-roll") && flows && stiff && straight && kinds;
    return rolls ? ScrewThread.Method.ROLL : ScrewThread.Method.TURN;
  }

  /** How an inside thread is made. */
  public static ScrewThread.Method inside(RouteDraft draft, ScrewThread thread) {
    if (thread.method() != ScrewThread.Method.AUTO) {
      return thread.method();
    }
    if (thread.size().majorMm() > draft.allowance("tapLargest")
        || thread.size().taperRatio() != 0
        || !draft.uses("thread-tap")) {
      return ScrewThread.Method.TURN;
    }
    Material material = draft.inquiry().material();
    boolean forms =
        draft.uses("thread-form")
            && material.findWindow(CuttingProcess.FORM_TAP).isPresent()
            && material.chipForm() == ChipForm.LONG
            && material.elongationPct() >= draft.allowance("formElongation")
            && thread.size().start().formTapDrillMm().isPresent();
    return forms ? ScrewThread.Method.FORM_TAP : ScrewThread.Method.TAP;
  }

  /** Largest bore under an outside thread. */
  private static double boreBehind(RouteDraft draft, ScrewThread thread) {
    Part part = draft.inquiry().part();
    var step = part.findOutside(thread.onElement());
    if (step.isEmpty()) {
      return 0;
    }
    double from = step.get().fromZMm();
    double to = step.get().toZMm();
    Stream<BoreStep> front =
        part.frontBore().stream().filter(b -> b.fromDepthMm() < to && b.toDepthMm() > from);
    Stream<BoreStep> back =
        part.backBore().stream()
            .filter(
                b ->
                    part.lengthMm() - b.toDepthMm() < to
                        && part.lengthMm() - b.fromDepthMm() > from);
    return Stream.concat(front, back).mapToDouble(BoreStep::largestDiameterMm).max().orElse(0);
  }
}
