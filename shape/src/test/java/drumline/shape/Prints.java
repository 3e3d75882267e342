package drumline.shape;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Feature;
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
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Small invented prints and operations for the tests of this module. */
public final class Prints {

  private Prints() {}

  public static Tolerance tolerance(String text) {
    return new Tolerance(text, -0.1, 0.1, OptionalInt.empty());
  }

  public static Edge chamfer(double sizeMm) {
    return new Edge(Edge.Kind.CHAMFER, sizeMm, 45);
  }

  public static Edge radius(double sizeMm) {
    return new Edge(Edge.Kind.RADIUS, sizeMm, 45);
  }

  public static OutsideStep step(String id, double fromMm, double toMm, double diameterMm) {
    return step(id, fromMm, toMm, diameterMm, diameterMm, Edge.NONE, Edge.NONE);
  }

  public static OutsideStep step(
      String id, double fromMm, double toMm, double startMm, double endMm, Edge front, Edge back) {
    return new OutsideStep(
        id,
        fromMm,
        toMm,
        startMm,
        endMm,
        OutsideStep.Surface.TURNED,
        tolerance("±0.1"),
        3.2,
        front,
        back);
  }

  public static BoreStep bore(
      String id, End end, double fromMm, double toMm, double diameterMm, Bottom bottom) {
    return bore(id, end, fromMm, toMm, diameterMm, bottom, Edge.NONE);
  }

  public static BoreStep bore(
      String id,
      End end,
      double fromMm,
      double toMm,
      double diameterMm,
      Bottom bottom,
      Edge mouth) {
    return new BoreStep(
        id, end, fromMm, toMm, diameterMm, diameterMm, tolerance("±0.1"), 3.2, mouth, bottom);
  }

  public static Part part(
      double lengthMm,
      List<OutsideStep> outside,
      List<BoreStep> front,
      List<BoreStep> back,
      List<Feature> features) {
    return new Part(
        "test piece",
        lengthMm,
        tolerance("±0.1"),
        3.2,
        3.2,
        outside,
        front,
        back,
        features,
        List.of());
  }

  public static Part turned(double lengthMm, OutsideStep... steps) {
    return part(lengthMm, List.of(steps), List.of(), List.of(), List.of());
  }

  public static Bar round(double diameterMm) {
    return new Bar(Bar.Shape.ROUND, diameterMm, 0, "h9", 3000);
  }

  public static Operation operation(String id, OperationKind kind, CutRegion... removes) {
    ToolFamily family =
        new ToolFamily(
            "test tool",
            ToolKind.TURNING_ROUGH,
            ToolMaterial.CARBIDE_COATED,
            0,
            100,
            0.4,
            95,
            1,
            2,
            4,
            BigDecimal.TEN,
            BigDecimal.ZERO,
            "EUR",
            5,
            "invented");
    CutSpec cut =
        new CutSpec(
            100, 0, 0, 100, 5000, "none", 0, 20, 0.1, 1, 1, 10, 5, new TaylorConstants(0.25, 300));
    return new Operation(
        id,
        "f",
        kind,
        kind.words() + " " + id,
        WorkEnd.EITHER,
        Set.of(),
        Set.of(),
        SpindleCondition.TURNING,
        new Tool(family, 1, BigDecimal.TEN),
        cut,
        Loads.NONE,
        List.of(removes),
        "because",
        "rule",
        List.of("invented"));
  }
}
