package drumline.drawing;

import drumline.drawing.Walls.Stay;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.material.ToolMaterial;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.tooling.Tool;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Invented work for the valve body of {@link Pieces}, and random work of any size. */
public final class Works {

  private Works() {}

  public static Operation operation(
      String id, OperationKind kind, String title, CutRegion... removes) {
    ToolFamily family =
        new ToolFamily(
            "tool",
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
        title,
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

  private static CutRegion ring(double fromMm, double toMm, double innerDia, double outerDia) {
    return CutRegion.rectangle(fromMm, toMm, innerDia / 2, outerDia / 2);
  }

  /** Work on six positions with two slides each. */
  public static List<Stay> valveBody() {
    List<Stay> s = new ArrayList<>();
    add(s, "1-1", 0.9, 1.9, OperationKind.DRILL, "drill Ø4 × 26", ring(-0.5, 27, 0, 4));
    add(
        s,
        "1-0",
        0.9,
        2.2,
        OperationKind.FORM_TURN,
        "rough form Ø12.4 × 10",
        ring(-0.5, 10, 12.4, 23));
    add(
        s,
        "2-0",
        0,
        2.6,
        OperationKind.ROUGH_TURN,
        "rough turn Ø15.4 × 18",
        ring(10, 18, 15.4, 23));
    add(s, "2-1", 0.3, 1.2, OperationKind.COUNTERBORE, "counterbore Ø6.8 × 9", ring(-1, 9, 0, 6.8));
    add(
        s,
        "3-0",
        0,
        3.4,
        OperationKind.FORM_TURN,
        "form neck Ø14 and taper",
        ring(24, 30, 14, 23),
        new CutRegion(
            List.of(
                new CutRegion.PointZr(30, 7),
                new CutRegion.PointZr(36, 9),
                new CutRegion.PointZr(42, 9),
                new CutRegion.PointZr(42, 12),
                new CutRegion.PointZr(30, 12))));
    add(s, "3-1", 0.4, 1.1, OperationKind.FINISH_BORE, "bore Ø7 H8 × 9", ring(-1, 9, 0, 7));
    add(s, "4-0", 0.4, 1.8, OperationKind.CROSS_DRILL, "drill 4× Ø2 across");
    add(s, "4-0", 2.6, 1.2, OperationKind.MILL_FLATS, "mill 2 flats 12 h11");
    add(
        s,
        "4-1",
        0.2,
        0.9,
        OperationKind.INSIDE_GROOVE,
        "groove Ø8 × 1.2 inside",
        ring(5, 6.2, 0, 8));
    add(
        s,
        "5-0",
        0,
        1.7,
        OperationKind.FINISH_TURN,
        "finish turn Ø15 h7, Ø12, Ø21, face",
        ring(-0.5, 10, 12, 23),
        ring(10, 18, 15, 23),
        ring(18, 24, 21, 23),
        ring(-0.5, 0, 0, 23));
    add(s, "5-0", 2.2, 0.6, OperationKind.GROOVE, "groove 1.9 × Ø12.2", ring(13, 14.9, 12.2, 23));
    add(s, "5-1", 1.0, 0.9, OperationKind.THREAD_TURN, "turn thread M12 × 1");
    add(s, "6-0", 0.7, 2.1, OperationKind.CUT_OFF, "cut off", ring(42, 44.5, 0, 23));
    add(s, "b-0", 1.1, 1.3, OperationKind.DRILL, "drill Ø10.2 × 10 back", ring(32, 43, 0, 10.2));
    add(s, "b-1", 2.8, 0.8, OperationKind.TAP, "tap M12 back");
    return s;
  }

  private static void add(
      List<Stay> stays,
      String slide,
      double startS,
      double cutS,
      OperationKind kind,
      String title,
      CutRegion... removes) {
    Operation operation = operation("op" + (stays.size() + 1), kind, title, removes);
    double dwellS = kind == OperationKind.FORM_TURN || kind == OperationKind.GROOVE ? 0.12 : 0;
    stays.add(new Stay(operation, slide, startS, cutS, dwellS));
  }

  /** Random work that fills slides one after the other, each within six seconds. */
  public static List<Stay> random(
      long seed, int positions, int slides, int operations, String titleTail) {
    Random random = new Random(seed);
    List<Stay> stays = new ArrayList<>();
    double[][] free = new double[positions + 1][slides];
    for (int i = 0; i < operations; i++) {
      int position = random.nextInt(positions + 1);
      int lane = random.nextInt(position == positions ? 2 : slides);
      double cutS = 0.15 + 1.6 * random.nextDouble();
      double startS = free[position][lane] + 0.2 * random.nextDouble();
      if (startS + cutS > 6 || lane >= free[position].length) {
        continue;
      }
      free[position][lane] = startS + cutS + 0.4;
      List<OperationKind> kinds = List.of(OperationKind.values());
      OperationKind kind = kinds.get(random.nextInt(kinds.size()));
      String title = kind.words() + " Ø" + (5 + random.nextInt(200) / 10.0) + titleTail;
      String slide = position == positions ? "b-" + lane : (position + 1) + "-" + lane;
      stays.add(new Stay(operation("op" + i, kind, title), slide, startS, cutS, 0));
    }
    return stays;
  }
}
