package drumline.shape;

import drumline.shape.setting.PositionTools;
import drumline.shape.setting.PositionTools.Job;
import drumline.shape.setting.ToolTimes;
import drumline.shop.machine.Axis;
import drumline.shop.machine.BarFeed;
import drumline.shop.machine.Machine;
import drumline.shop.machine.MachineCost;
import drumline.shop.machine.Position;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.machine.Workholding;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.material.ToolMaterial;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Invented tools on an invented machine of one position with two slides. */
public final class ToolWork {

  private ToolWork() {}

  public static Operation operation(
      String id, OperationKind kind, ToolKind tool, double sizeMm, CutRegion... removes) {
    double leadDeg =
        switch (tool) {
          case DRILL -> 140;
          case TURNING_ROUGH -> 95;
          case TURNING_FINISH, BORING -> 93;
          default -> 90;
        };
    ToolFamily family =
        new ToolFamily(
            tool.name(),
            tool,
            ToolMaterial.CARBIDE_COATED,
            0.1,
            100,
            0.4,
            leadDeg,
            2,
            2,
            8,
            BigDecimal.TEN,
            BigDecimal.ZERO,
            "EUR",
            5,
            "invented");
    CutSpec cut =
        new CutSpec(
            100, 0, 0, 100, 5000, "none", 0, 20, 0.1, 1, 1, 10, 40, new TaylorConstants(0.25, 300));
    return new Operation(
        id,
        "f",
        kind,
        kind.words() + " " + id,
        WorkEnd.FRONT,
        Set.of(SlideKind.CROSS, SlideKind.END),
        Set.of(),
        SpindleCondition.TURNING,
        new Tool(family, sizeMm, BigDecimal.TEN),
        cut,
        Loads.NONE,
        List.of(removes),
        "because",
        "rule",
        List.of("invented"));
  }

  public static ToolSlide slide(String id, SlideKind kind) {
    return new ToolSlide(id, kind, Set.of(Axis.X, Axis.Z), 80, 20, 5, 6000, 2, 0.3, Map.of());
  }

  public static Job cross(Operation operation, double startS, double endS) {
    return new Job(operation, slide("1-cross", SlideKind.CROSS), times(startS, endS));
  }

  public static Job end(Operation operation, double startS, double endS) {
    return new Job(operation, slide("1-end", SlideKind.END), times(startS, endS));
  }

  private static ToolTimes times(double startS, double endS) {
    double moveS = (endS - startS) / 5;
    return new ToolTimes(startS, startS + moveS, endS - moveS, endS);
  }

  public static PositionTools tools(Part part, Bar bar, Job... jobs) {
    return PositionTools.of(1, List.of(jobs), part, bar);
  }

  public static Machine machine() {
    return new Machine(
        "one",
        "One position, invented",
        Machine.Kind.DRUM,
        List.of(
            new Position(
                1, List.of(slide("1-cross", SlideKind.CROSS), slide("1-end", SlideKind.END)))),
        new SpindleDrive(SpindleDrive.Coupling.INDEPENDENT, 100, 6000, 9, 40, 3000, 0.4, 200),
        new Workholding(20000, 0.2, 0.5, 20, 2),
        null,
        new BarFeed(40, 3000, 120, 0.8, 15, BarFeed.Loading.IN_SHADOW),
        0.8,
        80,
        new MachineCost("EUR", BigDecimal.TEN, Map.of(), BigDecimal.TEN, 4, 2, 85),
        "invented");
  }
}
