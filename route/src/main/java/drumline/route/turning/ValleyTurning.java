package drumline.route.turning;

import static drumline.route.feature.Words.dia;

import drumline.route.cut.Cut;
import drumline.route.cut.PlungeWork;
import drumline.route.draft.Reach;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.EdgeLine;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Words;
import drumline.route.parting.CutOffMaking;
import drumline.route.turning.OutsideProfile.Face;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Outside steps behind a larger diameter, and the edge at the cut-off: rules {@code
 * behind-shoulder} and {@code back-edge}.
 */
public final class ValleyTurning {
  private final RouteDraft draft;
  private final OutsideProfile profile;

  /** For a draft. */
  public ValleyTurning(RouteDraft draft, OutsideProfile profile) {
    this.draft = draft;
    this.profile = profile;
  }

  /** Writes them into the draft. */
  public void write() {
    for (List<Face> run : profile.valleys()) {
      run.forEach(this::plunge);
      run.stream().filter(Face::finished).forEach(this::finish);
    }
    backEdge();
  }

  private void plunge(Face face) {
    OutsideStep step = face.step();
    double top = profile.barRadiusMm();
    double stock = draft.allowance("finishTurnStock");
    double radius = face.roughRadiusMm(stock);
    double blade = bladeFor(step.lengthMm());
    draft
        .tool(step.id(), ToolKind.GROOVING, CuttingProcess.GROOVE, blade)
        .ifPresent(
            choice -> {
              Reach.check(draft, choice, top - radius, blade, "Maybe turn it from the back.");
              Cut cut =
                  PlungeWork.recess(
                      draft,
                      choice,
                      step.lengthMm(),
                      top - radius,
                      2 * top,
                      draft.allowance("rapidApproach"));
              new OperationMaker(draft, OperationKind.FORM_TURN, step.id(), "behind-shoulder")
                  .title("plunge and turn " + dia(2 * radius, step.lengthMm()))
                  .removes(plunged(step, radius, top))
                  .add(choice, cut);
            });
  }

  /** The recess, with the edge of the shoulder in front of it. */
  private List<CutRegion> plunged(OutsideStep step, double radius, double top) {
    List<CutRegion> regions = new ArrayList<>();
    regions.add(CutRegion.rectangle(step.fromZMm(), step.toZMm(), radius, top + 1));
    for (Face before : profile.faces()) {
      boolean shoulder = Math.abs(before.step().toZMm() - step.fromZMm()) < 1e-9;
      if (shoulder && EdgeLine.hasForm(before.step().backEdge())) {
        boolean bar = before.step().surface() == OutsideStep.Surface.BAR;
        double surface = bar ? top : before.step().endDiameterMm() / 2;
        regions.add(edgeRegion(before.step().backEdge(), step.fromZMm(), surface, surface));
      }
    }
    return regions;
  }

  private void finish(Face face) {
    String title = "finish turn behind shoulder " + dia(2 * face.turnedRadiusMm());
    double blade = bladeFor(face.step().lengthMm());
    FinishCut.write(draft, face, ToolKind.GROOVING, blade, "finish-by-grade", title, skin(face));
  }

  private CutRegion skin(Face face) {
    OutsideStep step = face.step();
    double start = Math.min(step.startDiameterMm() / 2, face.turnedRadiusMm());
    double end = Math.min(step.endDiameterMm() / 2, face.turnedRadiusMm());
    double top = profile.barRadiusMm() + 1;
    return new CutRegion(
        List.of(
            new PointZr(step.fromZMm(), start),
            new PointZr(step.toZMm(), end),
            new PointZr(step.toZMm(), top),
            new PointZr(step.fromZMm(), top)));
  }

  /** The chamfer or radius where the piece is cut off. */
  private void backEdge() {
    List<Face> faces = profile.faces();
    if (faces.isEmpty()) {
      return;
    }
    Face last = faces.get(faces.size() - 1);
    Edge edge = last.step().backEdge();
    if (!EdgeLine.hasForm(edge)) {
      return;
    }
    double radius =
        last.step().surface() == OutsideStep.Surface.BAR
            ? profile.barRadiusMm()
            : Math.min(last.turnedRadiusMm(), last.step().endDiameterMm() / 2);
    draft
        .tool(
            last.step().id(),
            ToolKind.GROOVING,
            CuttingProcess.GROOVE,
            bladeFor(CutOffMaking.kerfMm(draft)))
        .ifPresent(
            choice -> {
              double depth = profile.barRadiusMm() - radius + edge.radialMm();
              Cut cut =
                  PlungeWork.recess(
                      draft,
                      choice,
                      choice.tool().sizeMm(),
                      depth,
                      2 * profile.barRadiusMm(),
                      draft.allowance("rapidApproach"));
              new OperationMaker(draft, OperationKind.FORM_TURN, last.step().id(), "back-edge")
                  .suffix("back-edge")
                  .title("chamfer edge at cut-off " + Words.mm(edge.sizeMm()))
                  .end(WorkEnd.EITHER)
                  .removes(
                      List.of(
                          edgeRegion(
                              edge,
                              profile.part().lengthMm(),
                              radius,
                              radiusBefore(last.step(), edge, radius))))
                  .add(choice, cut);
            });
  }

  /** Radius of a tapered step where its back edge begins; the end's own for a cylinder. */
  private static double radiusBefore(OutsideStep step, Edge edge, double radius) {
    double slope = (step.startDiameterMm() - step.endDiameterMm()) / 2 / step.lengthMm();
    return radius + slope * edge.sizeMm();
  }

  /**
   * The edge at a shoulder that looks to the collet.
   *
   * @param faceZMm where the shoulder stands
   * @param radiusMm radius of the surface there
   * @param beforeMm radius of the surface where the edge begins
   */
  private CutRegion edgeRegion(Edge edge, double faceZMm, double radiusMm, double beforeMm) {
    List<PointZr> outline = new ArrayList<>(EdgeLine.rising(edge, faceZMm, radiusMm, End.BACK));
    PointZr last = outline.remove(outline.size() - 1);
    double top = profile.barRadiusMm() + 1;
    outline.add(new PointZr(last.zMm(), beforeMm));
    outline.add(new PointZr(last.zMm(), top));
    outline.add(new PointZr(faceZMm, top));
    return new CutRegion(outline);
  }

  /** A blade about as wide as the recess, up to the widest for recesses. */
  private double bladeFor(double widthMm) {
    double most = draft.allowance("recessBlade");
    return Math.max(1, Math.min(most, Math.floor(widthMm * 2) / 2));
  }
}
