package drumline.route.driven;

import static drumline.route.feature.Words.mm;

import drumline.cutting.livetool.FlatWidth;
import drumline.cutting.livetool.PolygonTurning;
import drumline.route.cut.MillingWork;
import drumline.route.cut.PolygonWork;
import drumline.route.draft.RouteDraft;
import drumline.route.feature.OperationMaker;
import drumline.route.feature.Places;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingProcess;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.ToolKind;

/**
 * Flats, polygons and slots: rules {@code flats-side}, {@code flats-face}, {@code flats-polygon},
 * {@code slot-milled}.
 */
public final class FlatsMaking {
  private final RouteDraft draft;

  /** For a draft. */
  public FlatsMaking(RouteDraft draft) {
    this.draft = draft;
  }

  /** Writes them into the draft. */
  public void write() {
    draft.inquiry().part().features(Flats.class).forEach(this::flats);
    draft.inquiry().part().features(MilledSlot.class).forEach(this::slot);
  }

  private void flats(Flats flats) {
    double diameter =
        Places.outsideDiameterMm(
            draft.inquiry().part(), flats.fromZMm(), flats.toZMm() - flats.fromZMm());
    double width = flatWidthMm(flats, diameter);
    switch (method(flats, width)) {
      case POLYGON -> polygon(flats, diameter);
      case FACE -> fromEnd(flats, diameter, width);
      default -> fromSide(flats, diameter, width);
    }
  }

  /** Width of one flat: by the polygon's sides where they meet, else by the chord. */
  private static double flatWidthMm(Flats flats, double diameterMm) {
    double chord = FlatWidth.widthMm(diameterMm, flats.acrossMm() / 2);
    double side =
        flats.count() >= 3
            ? FlatWidth.polygonSideMm(flats.acrossMm(), flats.count())
            : Double.MAX_VALUE;
    return Math.min(chord, side);
  }

  private Flats.Method method(Flats flats, double width) {
    if (flats.method() != Flats.Method.AUTO) {
      return flats.method();
    }
    boolean even = flats.count() >= 4 && flats.count() % 2 == 0;
    double radius = draft.allowance("polygonCutterRadius");
    boolean crownFits =
        even
            && new PolygonTurning(flats.acrossMm(), flats.count(), radius).crownUm(width)
                < 250 * flats.tolerance().widthMm();
    boolean tool =
        draft
            .crib()
            .find(flats.id(), ToolKind.POLYGON_CUTTER, CuttingProcess.MILL, 2 * radius)
            .isPresent();
    return crownFits && tool && draft.uses("flats-polygon")
        ? Flats.Method.POLYGON
        : Flats.Method.SIDE;
  }

  private void fromSide(Flats flats, double diameter, double width) {
    double length = flats.toZMm() - flats.fromZMm();
    double depth = (diameter - flats.acrossMm()) / 2;
    double largest = draft.crib().largestMm(ToolKind.END_MILL, CuttingProcess.MILL);
    boolean across = width + 1 > largest;
    double cutter = Math.min(largest, Math.ceil((across ? length : width) + 1));
    double way = across ? width : length;
    draft
        .tool(flats.id(), ToolKind.END_MILL, CuttingProcess.MILL, cutter)
        .ifPresent(
            choice -> {
              OperationMaker maker =
                  new OperationMaker(draft, OperationKind.MILL_FLATS, flats.id(), "flats-side")
                      .title("mill " + flats.count() + " flats " + mm(flats.acrossMm()));
              if (across) {
                maker.needs(
                    SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS, Equipment.Y_AXIS);
              } else {
                maker.needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS);
              }
              maker.add(
                  choice,
                  MillingWork.mill(
                      draft,
                      choice,
                      new MillingWork.Shape(
                          way,
                          Math.min(cutter, across ? length : width),
                          depth,
                          flats.count(),
                          flats.acrossMm() / 2,
                          true)));
            });
  }

  private void fromEnd(Flats flats, double diameter, double width) {
    double length = flats.toZMm();
    double depth = (diameter - flats.acrossMm()) / 2;
    double largest = draft.crib().largestMm(ToolKind.END_MILL, CuttingProcess.MILL);
    double cutter = Math.min(largest, Math.max(6, Math.ceil(depth * 2)));
    draft
        .tool(flats.id(), ToolKind.END_MILL, CuttingProcess.MILL, cutter)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.MILL_FLATS, flats.id(), "flats-face")
                    .title(
                        "mill "
                            + flats.count()
                            + " flats "
                            + mm(flats.acrossMm())
                            + " from the end")
                    .from(SlideKind.END)
                    .needs(SpindleCondition.C_AXIS, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(
                        choice,
                        MillingWork.mill(
                            draft,
                            choice,
                            new MillingWork.Shape(
                                width,
                                Math.min(depth, cutter),
                                length,
                                flats.count(),
                                flats.acrossMm() / 2,
                                false))));
  }

  private void polygon(Flats flats, double diameter) {
    double radius = draft.allowance("polygonCutterRadius");
    draft
        .tool(flats.id(), ToolKind.POLYGON_CUTTER, CuttingProcess.MILL, 2 * radius)
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.POLYGON_TURN, flats.id(), "flats-polygon")
                    .title("turn polygon, " + flats.count() + " × " + mm(flats.acrossMm()))
                    .needs(SpindleCondition.TURNING, Equipment.LIVE_TOOL, Equipment.POLYGON_DRIVE)
                    .add(choice, PolygonWork.turn(draft, choice, flats, diameter, radius)));
  }

  private void slot(MilledSlot slot) {
    WorkEnd end = slot.place() == MilledSlot.Place.BACK_FACE ? WorkEnd.BACK : WorkEnd.FRONT;
    boolean outside = slot.place() == MilledSlot.Place.OUTSIDE;
    double arm =
        outside
            ? Places.outsideDiameterMm(draft.inquiry().part(), slot.zMm(), slot.lengthMm()) / 2
            : 0;
    draft
        .tool(slot.id(), ToolKind.END_MILL, CuttingProcess.MILL, slot.widthMm())
        .ifPresent(
            choice ->
                new OperationMaker(draft, OperationKind.MILL_SLOT, slot.id(), "slot-milled")
                    .title("mill slot " + mm(slot.widthMm()) + " × " + mm(slot.depthMm()))
                    .end(end)
                    .from(outside ? SlideKind.CROSS : SlideKind.END)
                    .needs(SpindleCondition.HELD, Equipment.LIVE_TOOL, Equipment.C_AXIS)
                    .add(
                        choice,
                        MillingWork.mill(
                            draft,
                            choice,
                            new MillingWork.Shape(
                                slot.lengthMm(),
                                slot.widthMm(),
                                slot.depthMm(),
                                slot.count(),
                                arm,
                                false))));
  }
}
