package drumline.cycle.sample;

import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.material.CuttingWindow.TaylorConstants;
import drumline.shop.material.ToolMaterial;
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
import java.util.List;
import java.util.Set;

/** Invented operations for tests. */
public final class OperationSample {
  private OperationSample() {}

  /** Turning operation with so many turns and no ways, loads or fixed time. */
  public static Operation turning(String id, double turnsCount) {
    return operation(id, OperationKind.ROUGH_TURN, SpindleCondition.TURNING, cut(turnsCount, 0, 0));
  }

  /** Operation in another spindle condition that takes a fixed time. */
  public static Operation fixed(String id, SpindleCondition condition, double fixedS) {
    OperationKind kind =
        condition == SpindleCondition.TURNING_ANY ? OperationKind.TAP : OperationKind.MILL_SLOT;
    return operation(id, kind, condition, cut(0, fixedS, 0));
  }

  /** Cut-off with so many turns, from the edge of the bar: no way back is counted. */
  public static Operation cutOff(double turnsCount) {
    CutSpec cut = cut(turnsCount, 0, 0);
    return operation(
        "cut-off", OperationKind.CUT_OFF, SpindleCondition.TURNING, withoutTravel(cut));
  }

  /** Any operation at the front, on any slide, without loads. */
  public static Operation operation(
      String id, OperationKind kind, SpindleCondition condition, CutSpec cut) {
    return new Operation(
        id,
        "feature",
        kind,
        kind.words() + " " + id,
        WorkEnd.FRONT,
        Set.of(SlideKind.CROSS, SlideKind.END),
        Set.of(),
        condition,
        tool(),
        cut,
        Loads.NONE,
        List.of(),
        "test",
        "test",
        List.of());
  }

  /** Cut between 100 and 6000 rev/min with 10 mm of travel. */
  public static CutSpec cut(double turnsCount, double fixedS, double approachMm) {
    TaylorConstants life = new TaylorConstants(0.25, 300);
    return new CutSpec(
        turnsCount, fixedS, 0, 100, 6000, "cutting speed", 0, 20, 0.1, 1, 1, 10, approachMm, life);
  }

  /** The same with loads. */
  public static Operation withLoads(Operation o, double torqueNm, double thrustN) {
    return copy(o, o.end(), o.equipment(), new Loads(0, thrustN, 0, torqueNm, 0, 0));
  }

  /** The same at an end of the work. */
  public static Operation withEnd(Operation o, WorkEnd end) {
    return copy(o, end, o.equipment(), o.loads());
  }

  /** The same with equipment that it needs. */
  public static Operation withEquipment(Operation o, Equipment... equipment) {
    return copy(o, o.end(), Set.of(equipment), o.loads());
  }

  private static CutSpec withoutTravel(CutSpec c) {
    return new CutSpec(
        c.revolutionsCount(),
        c.fixedS(),
        c.dwellRevCount(),
        c.lowestRevPerMin(),
        c.highestRevPerMin(),
        c.speedLimit(),
        c.toolRevPerMin(),
        c.cuttingDiameterMm(),
        c.feedMmPerRev(),
        c.depthMm(),
        c.passCount(),
        0,
        c.approachMm(),
        c.life());
  }

  private static Operation copy(Operation o, WorkEnd end, Set<Equipment> equipment, Loads loads) {
    return new Operation(
        o.id(),
        o.featureId(),
        o.kind(),
        o.title(),
        end,
        o.slides(),
        equipment,
        o.condition(),
        o.tool(),
        o.cut(),
        loads,
        o.removes(),
        o.reason(),
        o.ruleId(),
        o.sources());
  }

  private static Tool tool() {
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
            5,
            BigDecimal.TEN,
            BigDecimal.ZERO,
            "EUR",
            5,
            "invented");
    return family.tool(10);
  }
}
