package drumline.route.hole;

import static drumline.route.feature.Words.dia;
import static drumline.route.feature.Words.mm;

import drumline.route.cut.HoleWork;
import drumline.route.cut.TurningWork;
import drumline.route.cut.TurningWork.Side;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.feature.EdgeLine;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Surface;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.ArrayList;
import java.util.List;

/** What follows the drills in a hole: boring, reaming, counterboring, edges. */
public final class HoleFinishing {
  private final RouteDraft draft;
  private final End end;
  private final List<HolePlan.Step> plan;
  private final HoleRegions regions;

  /** For a draft. */
  public HoleFinishing(RouteDraft draft, End end, List<HolePlan.Step> plan) {
    this.draft = draft;
    this.end = end;
    this.plan = plan;
    this.regions = new HoleRegions(draft, end);
  }

  /** Writes them into the draft. */
  public void write() {
    for (int i = 0; i < plan.size(); i++) {
      HolePlan.Step step = plan.get(i);
      double before = openedMm(i);
      switch (step.method()) {
        case DRILLED -> {}
        case REAMED -> ream(step);
        case COUNTERBORED -> counterbore(step, before);
        case BORED -> bore(step, before);
      }
    }
    edges();
  }

  /** Diameter that the drills leave in a step. */
  private double openedMm(int index) {
    for (int i = index; i < plan.size(); i++) {
      if (plan.get(i).drillMm() > 0) {
        return Math.max(plan.get(i).drillMm(), HolePlan.openedMm(draft, end));
      }
    }
    return HolePlan.openedMm(draft, end);
  }

  private void ream(HolePlan.Step step) {
    BoreStep print = step.step();
    double diameter = print.startDiameterMm();
    Surface surface = Surface.of(draft, print);
    draft
        .tool(print.id(), ToolKind.REAMER, CuttingProcess.REAM, diameter)
        .ifPresent(
            choice -> {
              reach(choice, print, "Maybe ream from both ends, or take a longer reamer.");
              maker(OperationKind.REAM, print.id(), "ream-bore")
                  .title("ream " + dia(diameter) + " " + print.tolerance().text())
                  .because(surface.because(OperationKind.DRILL, OperationKind.REAM))
                  .removes(List.of(regions.straight(diameter, -1, print.toDepthMm())))
                  .add(
                      choice,
                      HoleWork.ream(draft, choice, print.toDepthMm(), surface.gradeCount()));
            });
  }

  private void counterbore(HolePlan.Step step, double before) {
    BoreStep print = step.step();
    double diameter = step.coreMm();
    double length = before > 0 ? print.lengthMm() : print.toDepthMm();
    draft
        .tool(print.id(), ToolKind.COUNTERBORE, CuttingProcess.DRILL, diameter)
        .ifPresent(
            choice ->
                maker(OperationKind.COUNTERBORE, print.id(), "counterbore-flat")
                    .title("counterbore " + dia(diameter, print.toDepthMm()))
                    .removes(List.of(regions.straight(diameter, -1, print.toDepthMm())))
                    .add(choice, HoleWork.counterbore(draft, choice, before, length)));
  }

  private void bore(HolePlan.Step step, double before) {
    BoreStep print = step.step();
    double finishStock = draft.allowance("finishBoreStock");
    double roughed = HolePlan.largest(print, step.coreMm()) - 2 * finishStock;
    double bar = boringBarMm(before > 0 ? before : roughed);
    if (step.roughBored()) {
      draft
          .tool(print.id(), ToolKind.BORING, CuttingProcess.BORE_ROUGH, bar)
          .ifPresent(
              choice ->
                  maker(OperationKind.ROUGH_BORE, print.id(), "rough-bore")
                      .title("rough bore " + dia(roughed, print.toDepthMm()))
                      .removes(roughRegion(print, roughed))
                      .add(
                          choice,
                          TurningWork.rough(
                              draft,
                              choice,
                              Side.INSIDE,
                              Math.max(0.1, (roughed - before) / 2),
                              print.lengthMm(),
                              roughed)));
    }
    draft
        .tool(print.id(), ToolKind.BORING, CuttingProcess.BORE_FINISH, bar)
        .ifPresent(
            choice -> {
              reach(choice, print, "Maybe take a carbide or damped bar, or ream the bore.");
              maker(OperationKind.FINISH_BORE, print.id(), "finish-bore")
                  .title("finish bore " + size(print))
                  .because(
                      Surface.of(draft, print)
                          .because(OperationKind.DRILL, OperationKind.FINISH_BORE))
                  .removes(List.of(regions.step(print)))
                  .add(
                      choice,
                      TurningWork.finish(
                          draft,
                          choice,
                          Side.INSIDE,
                          contourMm(print),
                          Surface.of(draft, print).cutRoughnessUm(OperationKind.FINISH_BORE),
                          print.largestDiameterMm()));
            });
  }

  /**
   * What roughing takes; nothing is counted for a taper, where the finishing cut's region says all.
   */
  private List<CutRegion> roughRegion(BoreStep print, double roughed) {
    return print.isTaper()
        ? List.of()
        : List.of(regions.straight(roughed, print.fromDepthMm() - 0.5, print.toDepthMm() - 0.1));
  }

  /** Chamfers at mouths that neither the spot nor a boring cut makes. */
  private void edges() {
    boolean spotted = !plan.isEmpty() && HoleMaking.spotMakesMouth(draft, plan);
    List<BoreStep> plain = new ArrayList<>();
    for (int i = 0; i < plan.size(); i++) {
      HolePlan.Step step = plan.get(i);
      if (step.method() != HolePlan.Method.BORED
          && EdgeLine.hasForm(step.step().mouthEdge())
          && !(i == 0 && spotted)) {
        plain.add(step.step());
      }
    }
    if (plain.isEmpty()) {
      return;
    }
    String id = plain.get(0).id();
    double largest = plain.stream().mapToDouble(BoreStep::largestDiameterMm).max().orElseThrow();
    double smallest = plain.stream().mapToDouble(BoreStep::smallestDiameterMm).min().orElseThrow();
    double way = plain.stream().mapToDouble(s -> 1.5 * s.mouthEdge().sizeMm() + 1).sum();
    draft
        .tool(id, ToolKind.BORING, CuttingProcess.BORE_FINISH, boringBarMm(smallest))
        .ifPresent(
            choice ->
                maker(OperationKind.FINISH_BORE, id, "edge-with-tool")
                    .suffix("edges")
                    .title(
                        "chamfer bore at "
                            + String.join(", ", plain.stream().map(BoreStep::id).toList()))
                    .removes(plain.stream().map(regions::edge).toList())
                    .add(
                        choice, TurningWork.finish(draft, choice, Side.INSIDE, way, 3.2, largest)));
  }

  private static double contourMm(BoreStep step) {
    double radial = Math.abs(step.endDiameterMm() - step.startDiameterMm()) / 2;
    double bottom = step.bottom() == BoreStep.Bottom.FLAT ? step.endDiameterMm() / 4 : 0;
    Edge edge = step.mouthEdge();
    return Math.hypot(step.lengthMm(), radial) + bottom + 0.5 * edge.sizeMm();
  }

  private static String size(BoreStep step) {
    String tolerance = step.tolerance().itGrade().isPresent() ? " " + step.tolerance().text() : "";
    return step.isTaper()
        ? "taper " + dia(step.startDiameterMm()) + "–" + dia(step.endDiameterMm())
        : dia(step.startDiameterMm()) + tolerance + " to " + mm(step.toDepthMm());
  }

  /** Thickest bar that goes into a bore with room for chips, in half millimetres. */
  private double boringBarMm(double boreMm) {
    double thick = Math.floor(draft.allowance("boringBarShare") * boreMm * 2) / 2;
    return Math.max(1, Math.min(draft.allowance("boringBarMost"), thick));
  }

  private void reach(ToolChoice choice, BoreStep print, String hint) {
    Reach.check(draft, choice, print.toDepthMm(), choice.tool().sizeMm(), hint);
  }

  private OperationMaker maker(OperationKind kind, String featureId, String ruleId) {
    return new OperationMaker(draft, kind, featureId, ruleId)
        .end(end == End.FRONT ? WorkEnd.FRONT : WorkEnd.BACK)
        .from(SlideKind.END);
  }
}
