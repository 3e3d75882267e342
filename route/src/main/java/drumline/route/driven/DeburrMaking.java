package drumline.route.driven;

import drumline.route.cut.LightWork;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.feature.OperationMaker;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.SlottedForm;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;
import java.util.Optional;

/** Burrs taken off where the print asks for it: rule {@code deburr-after}. */
public final class DeburrMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public DeburrMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(Deburring.class).forEach(this::deburr);
  }

  private void deburr(Deburring demand) {
    Optional<Feature> feature =
        draft.inquiry().part().features().stream()
            .filter(f -> f.id().equals(demand.ofFeature()))
            .findFirst();
    if (demand.method() == Deburring.Method.CHAMFER) {
      edges(demand, feature);
    } else {
      brush(demand, feature);
    }
  }

  private void edges(Deburring demand, Optional<Feature> feature) {
    double path = feature.map(DeburrMaking::edgeMm).orElse(10.0);
    int places = feature.map(DeburrMaking::placeCount).orElse(1);
    draft
        .tool(demand.id(), ToolKind.DEBURRING, CuttingProcess.MILL, draft.allowance("deburrCutter"))
        .ifPresent(
            choice ->
                maker(demand, feature)
                    .title("chamfer edges of " + demand.ofFeature())
                    .needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(choice, LightWork.followEdge(draft, choice, path, places)));
  }

  private void brush(Deburring demand, Optional<Feature> feature) {
    draft
        .plainTool(demand.id(), ToolKind.DEBURRING, draft.allowance("brushDiameter"))
        .ifPresent(
            tool -> {
              ToolChoice choice = LightWork.brushing(demand.id(), tool);
              maker(demand, feature)
                  .title("brush " + demand.ofFeature())
                  .needs(SpindleCondition.TURNING_ANY, Equipment.LIVE_TOOL)
                  .add(choice, LightWork.brush(draft, choice));
            });
  }

  private OperationMaker maker(Deburring demand, Optional<Feature> feature) {
    return new OperationMaker(draft, OperationKind.DEBURR, demand.id(), "deburr-after")
        .end(back(feature) ? WorkEnd.BACK : WorkEnd.FRONT)
        .from(fromEnd(feature) ? SlideKind.END : SlideKind.CROSS);
  }

  private static boolean fromEnd(Optional<Feature> feature) {
    return feature
        .map(
            f ->
                f instanceof FaceHoles
                    || f instanceof SlottedForm
                    || (f instanceof MilledSlot s && s.place() != MilledSlot.Place.OUTSIDE))
        .orElse(false);
  }

  private static boolean back(Optional<Feature> feature) {
    return feature
        .map(
            f ->
                (f instanceof FaceHoles h && h.end() == End.BACK)
                    || (f instanceof SlottedForm s && s.end() == End.BACK)
                    || (f instanceof MilledSlot m && m.place() == MilledSlot.Place.BACK_FACE))
        .orElse(false);
  }

  private static double edgeMm(Feature feature) {
    if (feature instanceof CrossHole hole) {
      return Math.PI * hole.diameterMm() * hole.count();
    }
    if (feature instanceof FaceHoles holes) {
      return Math.PI * holes.diameterMm() * holes.count();
    }
    if (feature instanceof Flats flats) {
      return 2 * (flats.toZMm() - flats.fromZMm()) * flats.count();
    }
    if (feature instanceof MilledSlot slot) {
      return 2 * slot.lengthMm() * slot.count();
    }
    return 20;
  }

  private static int placeCount(Feature feature) {
    if (feature instanceof CrossHole hole) {
      return hole.count();
    }
    if (feature instanceof FaceHoles holes) {
      return holes.count();
    }
    if (feature instanceof Flats flats) {
      return flats.count();
    }
    return feature instanceof MilledSlot slot ? slot.count() : 1;
  }
}
