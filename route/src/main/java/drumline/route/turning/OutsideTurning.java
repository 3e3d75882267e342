package drumline.route.turning;

import static drumline.route.feature.Words.dia;

import drumline.route.cut.Cut;
import drumline.route.cut.TurningWork;
import drumline.route.cut.TurningWork.Side;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.EdgeLine;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Words;
import drumline.route.turning.OutsideProfile.Face;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.OperationKind;
import drumline.shop.tooling.ToolKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Front face and outside, as far as a turning tool reaches them from the front: rules {@code
 * face-first}, {@code rough-in-layers}, {@code finish-by-grade}, {@code edge-with-tool}.
 */
public final class OutsideTurning {
  private final RouteDraft draft;
  private final OutsideProfile profile;

  /** For a draft. */
  public OutsideTurning(RouteDraft draft, OutsideProfile profile) {
    this.draft = draft;
    this.profile = profile;
  }

  /** Writes them into the draft. */
  public void write() {
    face();
    roughLayers();
    profile.open().stream().filter(Face::finished).forEach(this::finish);
    edges();
  }

  private void face() {
    double stock = draft.allowance("faceStock");
    double roughness = profile.part().frontFaceRoughnessRaUm();
    double outer = profile.barRadiusMm() * 2;
    double inner = draft.inquiry().bar().boreMm();
    draft
        .tool("front-face", ToolKind.TURNING_ROUGH, CuttingProcess.TURN_ROUGH, outer)
        .ifPresent(
            choice -> {
              Cut cut = TurningWork.face(draft, choice, stock, outer, inner, roughness);
              new OperationMaker(draft, OperationKind.FACE, "front-face", "face-first")
                  .title("face front")
                  .removes(List.of(CutRegion.rectangle(-stock, 0, inner / 2, outer / 2)))
                  .add(choice, cut);
            });
  }

  /** Layers from the bar inwards: each takes the stock down to the next larger step's size. */
  private void roughLayers() {
    List<Face> open = profile.open();
    double stock = draft.allowance("finishTurnStock");
    double outer = profile.barRadiusMm();
    for (int i = open.size() - 1; i >= 0; i--) {
      Face face = open.get(i);
      double radius = Math.min(outer, face.roughRadiusMm(stock));
      if (outer - radius > 0.05) {
        rough(face, outer, radius);
        outer = radius;
      }
    }
  }

  private void rough(Face face, double outer, double radius) {
    OutsideStep step = face.step();
    double length = step.toZMm();
    draft
        .tool(step.id(), ToolKind.TURNING_ROUGH, CuttingProcess.TURN_ROUGH, 2 * outer)
        .ifPresent(
            choice -> {
              Cut cut =
                  TurningWork.rough(draft, choice, Side.OUTSIDE, outer - radius, length, 2 * outer);
              new OperationMaker(draft, OperationKind.ROUGH_TURN, step.id(), "rough-in-layers")
                  .title("rough turn " + dia(2 * radius, length))
                  .removes(List.of(CutRegion.rectangle(0, length, radius, outer + 1)))
                  .add(choice, cut);
            });
  }

  private void finish(Face face) {
    OutsideStep step = face.step();
    boolean blank = face.blank();
    String rule = blank ? "blank-for-rolling" : step.isTaper() ? "finish-taper" : "finish-by-grade";
    String size =
        blank
            ? "blank " + dia(2 * face.turnedRadiusMm(), step.lengthMm())
            : step.isTaper()
                ? "taper " + dia(step.startDiameterMm()) + "–" + dia(step.endDiameterMm())
                : dia(step.largestDiameterMm())
                    + tolerance(step)
                    + " × "
                    + Words.mm(step.lengthMm());
    FinishCut.write(
        draft,
        face,
        ToolKind.TURNING_FINISH,
        2 * face.turnedRadiusMm(),
        rule,
        "finish turn " + size,
        skin(face));
  }

  /** Chamfers and radii of steps that get no finishing cut: one tool goes round them. */
  private void edges() {
    List<Face> plain = new ArrayList<>();
    for (Face face : profile.faces()) {
      if (!face.finished() && !face.behind() && EdgeLine.hasForm(face.step().frontEdge())) {
        plain.add(face);
      }
    }
    if (plain.isEmpty()) {
      return;
    }
    double length = plain.stream().mapToDouble(f -> f.step().frontEdge().sizeMm() * 1.5).sum();
    double largest = plain.stream().mapToDouble(f -> 2 * f.turnedRadiusMm()).max().orElseThrow();
    String id = plain.get(0).step().id();
    draft
        .tool(id, ToolKind.TURNING_FINISH, CuttingProcess.TURN_FINISH, largest)
        .ifPresent(
            choice -> {
              double way = length + (plain.size() - 1) * 2;
              Cut cut = TurningWork.finish(draft, choice, Side.OUTSIDE, way, 3.2, largest);
              new OperationMaker(draft, OperationKind.FINISH_TURN, id, "edge-with-tool")
                  .suffix("edges")
                  .title(
                      "turn edges of "
                          + String.join(", ", plain.stream().map(f -> f.step().id()).toList()))
                  .removes(plain.stream().map(this::edgeRegion).toList())
                  .add(choice, cut);
            });
  }

  private String tolerance(OutsideStep step) {
    return step.tolerance().itGrade().isPresent() ? " " + step.tolerance().text() : "";
  }

  /** The stock on one step with its front edge. */
  private CutRegion skin(Face face) {
    OutsideStep step = face.step();
    double start = Math.min(step.startDiameterMm() / 2, face.turnedRadiusMm());
    double end = Math.min(step.endDiameterMm() / 2, face.turnedRadiusMm());
    double top = profile.barRadiusMm() + 1;
    List<PointZr> outline = new ArrayList<>();
    outline.addAll(edgeLine(step, start));
    outline.add(new PointZr(step.toZMm(), end));
    outline.add(new PointZr(step.toZMm(), top));
    outline.add(new PointZr(step.fromZMm(), top));
    return new CutRegion(outline);
  }

  private CutRegion edgeRegion(Face face) {
    OutsideStep step = face.step();
    boolean bar = step.surface() == OutsideStep.Surface.BAR;
    double radius = bar ? profile.barRadiusMm() : face.turnedRadiusMm();
    double top = profile.barRadiusMm() + 1;
    List<PointZr> outline = new ArrayList<>(edgeLine(step, radius));
    PointZr last = outline.get(outline.size() - 1);
    outline.add(new PointZr(last.zMm(), top));
    outline.add(new PointZr(step.fromZMm(), top));
    return new CutRegion(outline);
  }

  /** From the face up the chamfer or round the radius to the surface. */
  private static List<PointZr> edgeLine(OutsideStep step, double radius) {
    return EdgeLine.rising(step.frontEdge(), step.fromZMm(), radius, End.FRONT);
  }
}
