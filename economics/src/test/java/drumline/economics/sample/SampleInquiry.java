package drumline.economics.sample;

import drumline.cycle.timeline.Timeline;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Overrides;
import drumline.shop.inquiry.Rates;
import drumline.shop.inquiry.Shifts;
import drumline.shop.inquiry.Today;
import drumline.shop.inquiry.Volumes;
import drumline.shop.inquiry.Wishes;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Axis;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.BarFeed.Loading;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.machine.Workholding;
import drumline.shop.material.Confidence;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.material.IsoGroup;
import drumline.shop.material.Material;
import drumline.shop.material.ToolMaterial;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** A brass bushing of an invented customer, on an invented machine. */
public final class SampleInquiry {
  private static final Tolerance H8 = new Tolerance("h8", -0.033, 0, OptionalInt.of(8));
  private static final BigDecimal ZERO = BigDecimal.ZERO;

  private SampleInquiry() {}

  /** The inquiry with a bar, a lot and a tolerance of the one turned diameter. */
  public static Inquiry inquiry(Bar bar, long perLotCount, Tolerance tolerance) {
    OutsideStep step =
        new OutsideStep(
            "seat",
            0,
            28,
            20,
            20,
            OutsideStep.Surface.TURNED,
            tolerance,
            1.6,
            Edge.NONE,
            Edge.NONE);
    Part part =
        new Part(
            "bushing",
            28,
            new Tolerance("±0.1", -0.1, 0.1, OptionalInt.empty()),
            3.2,
            3.2,
            List.of(step),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Inquiry(
        "Bushing",
        "Nordhang Armaturen",
        "N-17",
        UnitSystem.METRIC,
        part,
        bar,
        material(),
        new Volumes(400_000, perLotCount, 3),
        new Shifts(2, 8, 230),
        new Today("bought", 0, new BigDecimal("0.90"), "EUR"),
        new Rates("EUR", Map.of("USD", new BigDecimal("0.50")), money("40"), money("90"), 2),
        new Wishes(List.of(), List.of(), List.of(), List.of()),
        Overrides.NONE,
        List.of(),
        List.of(machine()));
  }

  /** The usual one: round bar 22 mm, lots of 50 000, h8. */
  public static Inquiry inquiry() {
    return inquiry(new Bar(Bar.Shape.ROUND, 22, 0, "h9", 3000), 50_000, H8);
  }

  /** Face, cross drill with a driven tool, cut off. */
  public static Route route() {
    return new Route(
        List.of(
            operation("10", OperationKind.FACE, 10, 22, Set.of(), -0.3, 0),
            operation("20", OperationKind.CROSS_DRILL, 5, 5, Set.of(Equipment.LIVE_TOOL), 9, 14),
            operation("30", OperationKind.CUT_OFF, 2.5, 22, Set.of(), 28, 30.5)),
        List.of(),
        List.of(),
        List.of());
  }

  /** The route's places. */
  public static Layout layout() {
    return new Layout(
        "six-32",
        List.of(
            new Placement("10", "1-cross", 3000, 0),
            new Placement("20", "1-cross", 0, 0),
            new Placement("30", "1-cross", 3000, 0)));
  }

  /** A cycle of five seconds. */
  public static Timeline timeline() {
    return new Timeline(List.of(), null, 4.4, 0.6, 1, 1);
  }

  /** A drum of one position, enough to price. */
  public static Machine machine() {
    ToolSlide slide =
        new ToolSlide(
            "1-cross",
            SlideKind.CROSS,
            Set.of(Axis.X, Axis.Z),
            60,
            30,
            8,
            4000,
            9,
            0.4,
            Map.of(Equipment.LIVE_TOOL, Fitting.OPTION));
    return new Machine(
        "six-32",
        "Six spindles of the 32 mm class",
        Machine.Kind.DRUM,
        List.of(new Position(1, List.of(slide))),
        new SpindleDrive(SpindleDrive.Coupling.INDEPENDENT, 100, 6000, 12, 40, 6000, 0.3, 200),
        new Workholding(20_000, 0.12, 0.2, 30, 2),
        null,
        new BarFeed(32, 3300, 120, 1, 20, Loading.STOPPED),
        0.6,
        80,
        new MachineCost(
            "USD",
            money("1000000"),
            Map.of(Equipment.LIVE_TOOL, money("20000")),
            money("120"),
            8,
            2,
            90),
        "invented");
  }

  private static Operation operation(
      String id,
      OperationKind kind,
      double toolMm,
      double diameterMm,
      Set<Equipment> equipment,
      double fromZMm,
      double toZMm) {
    boolean driven = equipment.contains(Equipment.LIVE_TOOL);
    ToolFamily family =
        new ToolFamily(
            "tool",
            ToolKind.CUT_OFF,
            ToolMaterial.CARBIDE_COATED,
            1,
            20,
            0.2,
            90,
            1,
            4,
            5,
            money("16"),
            ZERO,
            "USD",
            3,
            "invented");
    CutSpec cut =
        new CutSpec(
            driven ? 0 : 100,
            driven ? 2 : 0,
            0,
            500,
            4000,
            "speed",
            driven ? 4000 : 0,
            diameterMm,
            0.1,
            1,
            1,
            10,
            5,
            new TaylorConstants(0.25, 700));
    return new Operation(
        id,
        "seat",
        kind,
        kind.words(),
        WorkEnd.FRONT,
        Set.of(SlideKind.CROSS),
        equipment,
        driven ? SpindleCondition.HELD : SpindleCondition.TURNING,
        family.tool(toolMm),
        cut,
        Loads.NONE,
        List.of(CutRegion.rectangle(fromZMm, toZMm, 0, 11)),
        "sample",
        "sample",
        List.of());
  }

  private static Material material() {
    return new Material(
        "brass",
        List.of(),
        IsoGroup.N,
        8.5,
        120,
        430,
        97,
        18,
        new Material.CuttingForce(780, 0.18, Confidence.WEAK, "invented"),
        List.of(),
        money("8"),
        money("4"),
        "EUR",
        Material.ChipForm.SHORT,
        List.of(),
        Confidence.WEAK,
        "invented");
  }

  private static BigDecimal money(String amount) {
    return new BigDecimal(amount);
  }
}
