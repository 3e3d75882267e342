package drumline.cycle.sample;

import drumline.shop.machine.Axis;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.machine.Workholding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Invented machines for tests: slides {@code 1-cross}, {@code 1-end} and so on, index 0.5 s, 6000
 * rev/min at most, run-up 12000 rev/min each second, orientation 0.2 s, 10 kW and 60 Nm, tool shift
 * 0.3 s, rapid 24 m/min with 8 m/s², bar feed 0.7 s; pick-up grip 0.4, retract 0.5, eject 0.6,
 * return 0.7 s with back slides {@code back-1} and {@code back-2}.
 */
public final class MachineSample {
  private MachineSample() {}

  /** Drum without a pick-up spindle. */
  public static Machine drum(int positionCount) {
    return machine(Machine.Kind.DRUM, positionCount, 0.5, drive(12_000), null);
  }

  /** Drum with one pick-up spindle. */
  public static Machine drumWithPickUp(int positionCount) {
    return machine(Machine.Kind.DRUM, positionCount, 0.5, drive(12_000), pickUp(1));
  }

  /** Drum with other times. */
  public static Machine drum(int positionCount, double indexS, double runUpRevPerMinPerS) {
    return machine(Machine.Kind.DRUM, positionCount, indexS, drive(runUpRevPerMinPerS), null);
  }

  /** Any machine. */
  public static Machine machine(
      Machine.Kind kind,
      int positionCount,
      double indexS,
      SpindleDrive drive,
      @Nullable PickUp pickUp) {
    List<Position> positions =
        IntStream.rangeClosed(1, positionCount)
            .mapToObj(
                k ->
                    new Position(
                        k,
                        List.of(
                            slide(k + "-cross", SlideKind.CROSS),
                            slide(k + "-end", SlideKind.END))))
            .toList();
    return new Machine(
        "test-drum",
        "test drum",
        kind,
        positions,
        drive,
        new Workholding(20_000, 0.15, 0.4, 20, 2),
        pickUp,
        new BarFeed(32, 3000, 120, 0.7, 15, BarFeed.Loading.IN_SHADOW),
        indexS,
        100,
        new MachineCost(
            "EUR", BigDecimal.valueOf(1_000_000), Map.of(), BigDecimal.valueOf(90), 16, 2, 90),
        "invented");
  }

  /** Independent spindles. */
  public static SpindleDrive drive(double runUpRevPerMinPerS) {
    return new SpindleDrive(
        SpindleDrive.Coupling.INDEPENDENT, 100, 6000, 10, 60, runUpRevPerMinPerS, 0.2, 100);
  }

  /** Pick-up spindles with two back slides. */
  public static PickUp pickUp(int spindleCount) {
    return new PickUp(
        spindleCount,
        6000,
        5,
        20,
        8000,
        0.4,
        0.5,
        0.6,
        0.7,
        12_000,
        0.2,
        List.of(slide("back-1", SlideKind.BACK), slide("back-2", SlideKind.BACK)));
  }

  private static ToolSlide slide(String id, SlideKind kind) {
    return new ToolSlide(id, kind, Set.of(Axis.X, Axis.Z), 100, 24, 8, 5000, 3, 0.3, Map.of());
  }
}
