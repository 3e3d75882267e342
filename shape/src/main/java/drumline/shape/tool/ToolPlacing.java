package drumline.shape.tool;

import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shape.tool.ToolOutline.Side;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import java.util.List;

/**
 * Puts an operation's tool to the work: outline, way, overhang.
 *
 * <p>Known limits: outlines are simple and of usual sizes, not those of a tool maker's drawing;
 * tools that work at an angle around the axis are shown in the section plane; other tools on the
 * same slide are not shown.
 */
public final class ToolPlacing {

  private static final double ROOM_MM = 3;
  private static final double TURNING_OVERHANG_MM = 25;

  /** How far a bar stands out over its diameter at most: common practice, steel bars. */
  private static final double BAR_RATIO = 4;

  private static final double BORE_ROOM_MM = 0.6;
  private final Operation operation;
  private final WorkSide side;
  private final Tool tool;
  private final List<PointZr> cut;

  private ToolPlacing(Operation operation, WorkSide side) {
    this.operation = operation;
    this.side = side;
    this.tool = operation.tool();
    this.cut = new Ways(side, operation).cut();
  }

  /** The tool with as little overhang as the cut needs. */
  public static WorkingTool of(Operation operation, SlideKind slide, Part part, Bar bar) {
    return of(operation, slide, part, bar, 0);
  }

  /**
   * The tool standing out a length, but no less than the cut needs and no more than it can.
   *
   * @param slide kind of slide it stands on: back slides work on the cut-off side
   * @param wantedMm overhang wanted, 0 for the least
   */
  public static WorkingTool of(
      Operation operation, SlideKind slide, Part part, Bar bar, double wantedMm) {
    WorkSide.End end = slide == SlideKind.BACK ? WorkSide.End.BACK : WorkSide.End.FRONT;
    return new ToolPlacing(operation, new WorkSide(part, bar, end)).place(wantedMm);
  }

  private WorkingTool place(double wantedMm) {
    double leastMm = Math.ceil(leastMm());
    double longestMm = Math.max(leastMm, longestMm());
    double overhangMm = Math.min(longestMm, Math.max(leastMm, wantedMm));
    ToolOutline outline = outline(overhangMm);
    ToolPath path = path(outline.side());
    boolean isBack = side.end() == WorkSide.End.BACK;
    return new WorkingTool(
        operation,
        isBack ? outline.turnedRound() : outline,
        isBack ? path.turnedRound(side.part().lengthMm()) : path,
        overhangMm,
        longestMm);
  }

  private ToolPath path(Side from) {
    double approachMm = operation.cut().approachMm();
    PointZr first = cut.get(0);
    PointZr last = cut.get(cut.size() - 1);
    return from == Side.ACROSS
        ? new ToolPath(
            new PointZr(first.zMm(), first.rMm() + approachMm),
            cut,
            new PointZr(last.zMm(), last.rMm() + approachMm))
        : new ToolPath(
            new PointZr(first.zMm() - approachMm, first.rMm()),
            cut,
            new PointZr(first.zMm() - approachMm, last.rMm()));
  }

  private double deepestZMm() {
    return cut.stream().mapToDouble(PointZr::zMm).max().orElse(0);
  }

  private double deepestRMm() {
    return cut.stream().mapToDouble(PointZr::rMm).min().orElse(0);
  }

  private double leastMm() {
    return switch (tool.family().kind()) {
      case TURNING_ROUGH, TURNING_FINISH, THREADING -> TURNING_OVERHANG_MM;
      case GROOVING, CUT_OFF, FORM -> side.stockRMm() - deepestRMm() + ROOM_MM;
      case KNURLING, THREAD_ROLLING, SIDE_CUTTER, POLYGON_CUTTER -> 0;
      case FACE_GROOVING -> Math.max(ROOM_MM, deepestZMm() + ROOM_MM);
      default ->
          isAcross()
              ? side.stockRMm() - deepestRMm() + 2 * ROOM_MM
              : Math.max(2 * ROOM_MM, deepestZMm() + ROOM_MM);
    };
  }

  private double longestMm() {
    ToolFamily family = tool.family();
    double byForm = ToolForms.of(family.kind()).leastReachMm();
    return switch (family.kind()) {
      case INSIDE_GROOVING, SLOTTING -> Math.max(byForm, BAR_RATIO * barMm());
      default -> Math.max(byForm, family.lengthRatio() * tool.sizeMm());
    };
  }

  /** Whether a driven tool works from the side. */
  private boolean isAcross() {
    return switch (operation.kind()) {
      case CROSS_DRILL, CROSS_TAP, MILL_FLATS, POLYGON_TURN, MILL_SLOT, ENGRAVE, DEBURR, BURNISH ->
          featurePlace() == FeaturePlace.Place.OUTSIDE;
      default -> false;
    };
  }

  private FeaturePlace.Place featurePlace() {
    return FeaturePlace.find(side, operation.featureId())
        .map(FeaturePlace::place)
        .orElse(FeaturePlace.Place.OUTSIDE);
  }

  private ToolOutline outline(double overhangMm) {
    double size = tool.sizeMm();
    return switch (tool.family().kind()) {
      case TURNING_ROUGH, TURNING_FINISH -> TurningOutlines.outside(tool, overhangMm);
      case BORING -> TurningOutlines.inside(tool, overhangMm);
      case THREADING ->
          featurePlace() == FeaturePlace.Place.OUTSIDE
              ? TurningOutlines.threading(tool, TURNING_OVERHANG_MM)
              : TurningOutlines.threadingInside(
                  tool, 0.6 * 2 * cut.get(0).rMm(), Math.ceil(deepestZMm() + 4));
      case GROOVING, CUT_OFF, FORM -> BladeOutlines.across(size, overhangMm);
      case INSIDE_GROOVING -> insideGrooving(size, overhangMm);
      case FACE_GROOVING -> BladeOutlines.face(size, overhangMm);
      case SLOTTING -> slotting(size, overhangMm);
      case KNURLING -> WheelOutlines.knurl(Math.max(3, featureLengthMm()));
      case THREAD_ROLLING -> WheelOutlines.roll(featureLengthMm() + 2);
      case SIDE_CUTTER, POLYGON_CUTTER -> WheelOutlines.disc(Math.max(3, featureLengthMm()), size);
      default -> round(overhangMm);
    };
  }

  private double featureLengthMm() {
    return FeaturePlace.find(side, operation.featureId()).map(FeaturePlace::lengthMm).orElse(5.0);
  }

  private ToolOutline insideGrooving(double widthMm, double overhangMm) {
    return BladeOutlines.inside(widthMm, inDepthMm(), barMm(), overhangMm);
  }

  private ToolOutline slotting(double widthMm, double overhangMm) {
    return BladeOutlines.slotting(widthMm, inDepthMm(), barMm(), overhangMm);
  }

  /** Radius in mm of the bore that a bar goes into. */
  private double boreRMm() {
    return Math.max(1, side.boreRMm(Math.max(0.5, cut.get(0).zMm())));
  }

  /** How far a bar's cutting part stands out beyond the bar. */
  private double inDepthMm() {
    double topMm = cut.stream().mapToDouble(PointZr::rMm).max().orElse(0);
    return Math.max(0.5, topMm - boreRMm() + 0.3);
  }

  /** Diameter in mm of a bar that still goes into the bore with its cutting part. */
  private double barMm() {
    return Math.max(1.5, 2 * (boreRMm() - BORE_ROOM_MM) - inDepthMm());
  }

  private ToolOutline round(double overhangMm) {
    double size = tool.sizeMm();
    ToolFamily family = tool.family();
    double usable = family.lengthRatio() * size;
    ToolOutline along =
        switch (family.kind()) {
          case SPOT_DRILL ->
              AxisOutlines.drill(size, family.leadAngleDeg(), 1.5 * size, overhangMm);
          case DRILL, DRIVEN_DRILL ->
              AxisOutlines.drill(size, pointDeg(family), usable, overhangMm);
          case COUNTERBORE, END_MILL -> AxisOutlines.drill(size, 180, usable, overhangMm);
          case REAMER -> AxisOutlines.led(size, 0.9 * size, 0.1 * size, usable, overhangMm);
          case TAP, FORM_TAP, DRIVEN_TAP ->
              AxisOutlines.led(size, 0.8 * size, 0.3 * size, 2 * size, overhangMm);
          case ENGRAVING ->
              AxisOutlines.pointed(size, 4, 4, overhangMm, List.of(Dimension.mm("DC", size)));
          case DEBURRING -> deburring(overhangMm);
          default -> AxisOutlines.led(size, 0.95 * size, 0.1 * size, usable, overhangMm);
        };
    return isAcross() && along.side() == Side.ALONG ? AxisOutlines.across(along) : along;
  }

  /** A brush is seen on edge; a cutter has a cone. */
  private ToolOutline deburring(double overhangMm) {
    double size = tool.sizeMm();
    return tool.family().edgesCount() == 1
        ? WheelOutlines.disc(Math.max(4, featureLengthMm()), size)
        : AxisOutlines.pointed(
            0.1 * size, size, size / 2, overhangMm, List.of(Dimension.mm("DC", size)));
  }

  private static double pointDeg(ToolFamily family) {
    return family.leadAngleDeg() >= 60 ? family.leadAngleDeg() : 118;
  }
}
