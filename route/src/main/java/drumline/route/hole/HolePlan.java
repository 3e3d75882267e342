package drumline.route.hole;

import drumline.route.draft.RouteDraft;
import drumline.route.feature.Surface;
import drumline.route.feature.ThreadChoice;
import drumline.route.feature.ThroughBore;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.feature.ScrewThread;
import drumline.shop.material.CuttingProcess;
import drumline.shop.part.Part;
import drumline.shop.tooling.ToolKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How each step of a hole is to be made, mouth first: rules {@code finish-bore}, {@code ream-bore},
 * {@code counterbore-flat}, {@code rough-bore}, {@code drill-large-first}.
 */
public final class HolePlan {
  private HolePlan() {}

  /** How a step gets its size. */
  public enum Method {
    /** The drill leaves it. */
    DRILLED,
    /** A reamer follows the drill. */
    REAMED,
    /** A boring tool follows. */
    BORED,
    /** A flat-bottomed tool follows. */
    COUNTERBORED
  }

  /**
   * One step and what leads to it.
   *
   * @param step the print's step
   * @param method how it gets its size
   * @param coreMm diameter before threads: the tapping drill's for a tapped step
   * @param drillMm diameter of its own drill, 0 where the next step's drill opens it
   * @param roughBored whether a roughing cut comes before the finishing one
   */
  public record Step(
      BoreStep step, Method method, double coreMm, double drillMm, boolean roughBored) {}

  public static List<Step> of(RouteDraft draft, End end) {
    Part part = draft.inquiry().part();
    List<BoreStep> steps = end == End.FRONT ? part.frontBore() : part.backBore();
    List<Step> plan = new ArrayList<>();
    double deeper = openedMm(draft, end);
    for (int i = steps.size() - 1; i >= 0; i--) {
      Step step = plan(draft, steps.get(i), deeper);
      plan.add(0, step);
      deeper = step.drillMm() > 0 ? step.drillMm() : deeper;
    }
    return plan;
  }

  /**
   * Hole that is there before: the tube's bore, or seen from the back a through bore from the
   * front.
   */
  static double openedMm(RouteDraft draft, End end) {
    Part part = draft.inquiry().part();
    double bar = draft.inquiry().bar().boreMm();
    if (end == End.FRONT) {
      return bar;
    }
    return part.frontBore().stream()
        .filter(step -> ThroughBore.is(part, step))
        .mapToDouble(BoreStep::endDiameterMm)
        .reduce(bar, Math::max);
  }

  private static Step plan(RouteDraft draft, BoreStep step, double deeperDrillMm) {
    double core = coreMm(draft, step);
    Method method = method(draft, step, core, deeperDrillMm);
    double largest = draft.crib().largestMm(ToolKind.DRILL, CuttingProcess.DRILL);
    double wanted = wantedDrillMm(draft, step, method, core);
    double drill = Math.min(wanted, largest);
    boolean beyond = wanted > largest && deeperDrillMm < wanted;
    if (beyond && (method == Method.DRILLED || method == Method.REAMED)) {
      method = Method.BORED;
    }
    double stock = (core - deeperDrillMm) / 2;
    boolean deeperOpens =
        deeperDrillMm > 0
            && (method == Method.COUNTERBORED
                || (method == Method.BORED && stock <= draft.allowance("boringStock")));
    double before = deeperOpens ? deeperDrillMm : drill;
    boolean rough =
        method == Method.BORED
            && (fine(draft, step)
                || (core - before) / 2 > draft.allowance("finishBoreStock") + 0.4);
    return new Step(step, method, core, deeperOpens ? 0 : drill, rough);
  }

  /** Size at the wide end: the core's, or the taper's greater diameter. */
  public static double largest(BoreStep step, double coreMm) {
    return step.isTaper() ? step.largestDiameterMm() : coreMm;
  }

  private static boolean fine(RouteDraft draft, BoreStep step) {
    return draft.uses("rough-bore") && Surface.of(draft, step).needsRoughBore();
  }

  private static Method method(RouteDraft draft, BoreStep step, double core, double deeperDrillMm) {
    Surface surface = Surface.of(draft, step);
    boolean finish = surface.needsFinishBore();
    if (threadOn(draft, step).isPresent()) {
      return threadOn(draft, step).map(t -> ThreadChoice.inside(draft, t)).orElseThrow()
              == ScrewThread.Method.TURN
          ? Method.BORED
          : Method.DRILLED;
    }
    boolean reams = draft.uses("ream-bore") && surface.isReamed() && reamable(draft, step);
    if (finish && !step.isTaper() && reams) {
      return Method.REAMED;
    }
    if (finish) {
      return Method.BORED;
    }
    if (step.bottom() == Bottom.FLAT && deeperDrillMm > 0) {
      boolean tool =
          draft.uses("counterbore-flat")
              && draft.crib().largestMm(ToolKind.COUNTERBORE, CuttingProcess.DRILL) >= core;
      return tool ? Method.COUNTERBORED : Method.BORED;
    }
    return step.bottom() == Bottom.FLAT ? Method.BORED : Method.DRILLED;
  }

  private static boolean reamable(RouteDraft draft, BoreStep step) {
    boolean related =
        draft.inquiry().part().relations().stream()
            .anyMatch(
                r ->
                    r.valueMm() < draft.allowance("reamRelation")
                        && (r.ofElement().equals(step.id()) || r.toElement().equals(step.id())));
    double diameter = step.startDiameterMm();
    return !related
        && step.bottom() != Bottom.FLAT
        && draft.crib().find(step.id(), ToolKind.REAMER, CuttingProcess.REAM, diameter).isPresent();
  }

  private static double wantedDrillMm(RouteDraft draft, BoreStep step, Method method, double core) {
    return switch (method) {
      case DRILLED -> core;
      case REAMED -> core - 2 * draft.allowance("reamStock");
      case COUNTERBORED -> tenth(core * 0.8);
      case BORED -> {
        double stock = draft.allowance("finishBoreStock");
        stock += fine(draft, step) ? draft.allowance("roughBoreStock") : 0;
        yield tenth(Math.max(core * 0.6, core - 2 * stock));
      }
    };
  }

  /** Diameter before the thread: the tapping or forming drill's, or the step's least diameter. */
  public static double coreMm(RouteDraft draft, BoreStep step) {
    return threadOn(draft, step)
        .map(
            thread ->
                switch (ThreadChoice.inside(draft, thread)) {
                  case FORM_TAP ->
                      thread.size().start().formTapDrillMm().orElse(step.smallestDiameterMm());
                  case TAP -> thread.size().start().tapDrillMm().orElse(step.smallestDiameterMm());
                  default -> step.smallestDiameterMm();
                })
        .orElse(step.smallestDiameterMm());
  }

  public static Optional<ScrewThread> threadOn(RouteDraft draft, BoreStep step) {
    return draft.inquiry().part().features(ScrewThread.class).stream()
        .filter(thread -> thread.onElement().equals(step.id()))
        .findFirst();
  }

  private static double tenth(double value) {
    return Math.floor(value * 10 + 1e-9) / 10;
  }
}
