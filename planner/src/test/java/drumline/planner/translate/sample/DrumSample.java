package drumline.planner.translate.sample;

import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.machine.Axis;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Fitting;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.machine.Workholding;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tolerance.Tolerance;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** Invented drums of the 26 mm class, and a piece of 20 mm bar. */
public final class DrumSample {
  private static final Tolerance OPEN = new Tolerance("±0.1", -0.1, 0.1, OptionalInt.empty());

  private DrumSample() {}

  /** Independent spindles and a pick-up spindle; live tools and C axis can be had. */
  public static Machine independent(int positionCount) {
    return machine(positionCount, SpindleDrive.Coupling.INDEPENDENT);
  }

  /** One speed for all spindles. */
  public static Machine common(int positionCount) {
    return machine(positionCount, SpindleDrive.Coupling.COMMON);
  }

  private static Machine machine(int positionCount, SpindleDrive.Coupling coupling) {
    List<Position> positions =
        IntStream.rangeClosed(1, positionCount)
            .mapToObj(
                k ->
                    new Position(
                        k,
                        List.of(
                            slide(k + "-cross", SlideKind.CROSS, 8),
                            slide(k + "-end", SlideKind.END, 6))))
            .toList();
    PickUp pickUp =
        new PickUp(
            1,
            5000,
            5,
            20,
            9000,
            0.3,
            0.4,
            0.2,
            0.4,
            9000,
            0.2,
            List.of(slide("back-1", SlideKind.BACK, 6), slide("back-2", SlideKind.BACK, 6)));
    return new Machine(
        "test-drum",
        "test drum",
        Machine.Kind.DRUM,
        positions,
        new SpindleDrive(coupling, 200, 6000, 9, 40, 9000, 0.2, 100),
        new Workholding(22_000, 0.15, 0.3, 20, 2),
        pickUp,
        new BarFeed(26, 3000, 120, 0.6, 12, BarFeed.Loading.IN_SHADOW),
        0.55,
        80,
        new MachineCost(
            "EUR",
            BigDecimal.valueOf(900_000),
            Map.of(Equipment.LIVE_TOOL, BigDecimal.valueOf(9000)),
            BigDecimal.valueOf(90),
            16,
            2,
            90),
        "invented");
  }

  private static ToolSlide slide(String id, SlideKind kind, double accelerationMPerS2) {
    return new ToolSlide(
        id,
        kind,
        Set.of(Axis.X, Axis.Z),
        100,
        24,
        accelerationMPerS2,
        4000,
        3,
        0.25,
        Map.of(Equipment.LIVE_TOOL, Fitting.OPTION, Equipment.C_AXIS, Fitting.OPTION));
  }

  /** Round bar. */
  public static Bar bar(double sizeMm) {
    return new Bar(Bar.Shape.ROUND, sizeMm, 0, "h9", 3000);
  }

  /** A pin of 16 mm with a head of 20 mm. */
  public static Part part(double lengthMm) {
    return new Part(
        "pin",
        lengthMm,
        OPEN,
        3.2,
        3.2,
        List.of(step("shank", 0, 20, 16), step("head", 20, lengthMm, 20)),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static OutsideStep step(String id, double fromZMm, double toZMm, double diameterMm) {
    return new OutsideStep(
        id,
        fromZMm,
        toZMm,
        diameterMm,
        diameterMm,
        OutsideStep.Surface.TURNED,
        OPEN,
        3.2,
        Edge.NONE,
        Edge.NONE);
  }
}
