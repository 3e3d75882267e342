package drumline.route.hole;

import static drumline.route.feature.Words.dia;
import static drumline.route.feature.Words.mm;

import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.route.cut.Cut;
import drumline.route.cut.HoleWork;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.ThroughBore;
import drumline.route.parting.CutOffMaking;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Spots and drills of a hole: rules {@code spot-before-drill}, {@code drill-split}. */
public final class HoleMaking {
  private final RouteDraft draft;
  private final End end;
  private final List<HolePlan.Step> plan;
  private final HoleRegions regions;

  /** For a draft. */
  public HoleMaking(RouteDraft draft, End end, List<HolePlan.Step> plan) {
    this.draft = draft;
    this.end = end;
    this.plan = plan;
    this.regions = new HoleRegions(draft, end);
  }

  /** Writes them into the draft. */
  public void write() {
    if (plan.isEmpty()) {
      return;
    }
    spot();
    double reached = 0;
    for (HolePlan.Step step : plan) {
      if (step.drillMm() > 0 && step.drillMm() > HolePlan.openedMm(draft, end)) {
        reached = drill(step, reached);
      }
    }
  }

  /** Whether the spot makes the mouth's chamfer of a hole whose first step is not bored. */
  static boolean spotMakesMouth(RouteDraft draft, List<HolePlan.Step> plan) {
    HolePlan.Step first = plan.get(0);
    Edge edge = first.step().mouthEdge();
    double mouth = first.coreMm() + 2 * edge.radialMm();
    return first.method() != HolePlan.Method.BORED
        && edge.kind() == Edge.Kind.CHAMFER
        && Math.abs(edge.angleDeg() - 45) < 1e-9
        && mouth <= draft.allowance("spotLargest");
  }

  private void spot() {
    HolePlan.Step first = firstDrilled();
    if (first == null) {
      return;
    }
    double drill = first.drillMm();
    boolean chamfers = spotMakesMouth(draft, plan);
    double reach = plan.get(plan.size() - 1).step().toDepthMm();
    boolean solid = HolePlan.openedMm(draft, end) == 0;
    boolean needed =
        solid
            && draft.uses("spot-before-drill")
            && (drill <= draft.allowance("spotDiameter")
                || reach / drill > draft.allowance("spotRatio"));
    if (!needed && !chamfers) {
      return;
    }
    double mouth =
        chamfers
            ? plan.get(0).coreMm() + 2 * plan.get(0).step().mouthEdge().radialMm()
            : Math.min(draft.allowance("spotShare") * drill, draft.allowance("spotLargest"));
    String id = plan.get(0).step().id();
    draft
        .tool(id, ToolKind.SPOT_DRILL, CuttingProcess.DRILL, mouth)
        .ifPresent(
            choice ->
                maker(OperationKind.SPOT, id, "spot-before-drill")
                    .title("spot " + dia(mouth))
                    .removes(List.of(regions.cone(0, mouth, 90)))
                    .add(choice, HoleWork.spot(draft, choice, mouth)));
  }

  private HolePlan.@Nullable Step firstDrilled() {
    return plan.stream().filter(s -> s.drillMm() > 0).findFirst().orElse(null);
  }

  /** Drills one step in as many parts as its depth asks for; gives back the depth reached. */
  private double drill(HolePlan.Step step, double reached) {
    double diameter = step.drillMm();
    double bottom = bottomMm(step);
    draft
        .tool(step.step().id(), ToolKind.DRILL, CuttingProcess.DRILL, diameter)
        .ifPresent(choice -> drillParts(step, choice, reached, bottom));
    return bottom;
  }

  private void drillParts(HolePlan.Step step, ToolChoice choice, double reached, double bottom) {
    double length = bottom - reached;
    double ratio = length / step.drillMm();
    int most = (int) draft.allowance("drillPartsMost");
    int wanted = (int) Math.ceil(ratio / draft.allowance("drillSplitRatio"));
    int parts = draft.uses("drill-split") ? Math.max(1, Math.min(most, wanted)) : 1;
    Reach.check(
        draft,
        choice,
        bottom,
        step.drillMm(),
        "Maybe drill from both ends, or take a longer drill with coolant through it.");
    for (int part = 0; part < parts; part++) {
      double from = reached + length * part / parts;
      double to = reached + length * (part + 1) / parts;
      boolean last = part == parts - 1;
      Cut cut =
          HoleWork.drill(
              draft,
              choice,
              to - from,
              last ? depthTo(step) : DepthTo.TIP,
              part == 0 && reached == 0);
      String rule = parts > 1 ? "drill-split" : "drill-large-first";
      OperationMaker maker =
          maker(OperationKind.DRILL, step.step().id(), rule)
              .title("drill " + dia(step.drillMm()) + " to " + mm(to))
              .removes(
                  List.of(
                      regions.drilled(
                          step.drillMm(),
                          to,
                          HoleRegions.point(choice),
                          last ? depthTo(step) : DepthTo.TIP)));
      if (parts > 1) {
        maker.suffix(String.valueOf((char) ('a' + part)));
      }
      maker.add(choice, cut);
    }
  }

  private DepthTo depthTo(HolePlan.Step step) {
    BoreStep print = step.step();
    if (print.bottom() == Bottom.THROUGH) {
      return DepthTo.THROUGH;
    }
    return print.bottom() == Bottom.FLAT && step.method() != HolePlan.Method.DRILLED
        ? DepthTo.TIP
        : DepthTo.FULL_DIAMETER;
  }

  /** Depth that the drill's full diameter, or its tip above a flat bottom, reaches. */
  private double bottomMm(HolePlan.Step step) {
    double depth = step.step().toDepthMm();
    if (ThroughBore.is(draft.inquiry().part(), step.step())) {
      return draft.inquiry().part().lengthMm() + CutOffMaking.kerfMm(draft);
    }
    return depthTo(step) == DepthTo.TIP ? depth - 0.1 : depth;
  }

  private OperationMaker maker(OperationKind kind, String featureId, String ruleId) {
    return new OperationMaker(draft, kind, featureId, ruleId)
        .end(end == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK)
        .from(SlideKind.END);
  }
}
