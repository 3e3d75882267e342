package drumline.planner.translate.sample;

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

/** An invented operation in the making: turned, from both sides, light, until something is said. */
public final class OperationDraft {
  private final String id;
  private final OperationKind kind;
  private WorkEnd end = WorkEnd.FRONT;
  private Set<SlideKind> slides = Set.of(SlideKind.CROSS, SlideKind.END);
  private Set<Equipment> equipment = Set.of();
  private SpindleCondition condition = SpindleCondition.TURNING;
  private double turnsCount;
  private double fixedS;
  private double lowestRevPerMin = 100;
  private double highestRevPerMin = 6000;
  private double torqueNm;
  private double thrustN;
  private double feedForceN;

  /** Begins an operation. */
  public OperationDraft(String id, OperationKind kind) {
    this.id = id;
    this.kind = kind;
  }

  /** Turns of the spindle and the window of its speed. */
  public OperationDraft turns(double count, double lowest, double highest) {
    turnsCount = count;
    lowestRevPerMin = lowest;
    highestRevPerMin = highest;
    return this;
  }

  /** A spindle condition other than turning, with a fixed time. */
  public OperationDraft fixed(SpindleCondition newCondition, double timeS) {
    condition = newCondition;
    fixedS = timeS;
    return this;
  }

  /** From one side only. */
  public OperationDraft from(SlideKind... kinds) {
    slides = Set.of(kinds);
    return this;
  }

  /** At an end of the work. */
  public OperationDraft at(WorkEnd newEnd) {
    end = newEnd;
    return this;
  }

  /** With equipment. */
  public OperationDraft with(Equipment... kinds) {
    equipment = Set.of(kinds);
    return this;
  }

  /** With loads; the slide pushes with the thrust or half of the tangential force at 10 mm. */
  public OperationDraft loads(double newTorqueNm, double newThrustN) {
    torqueNm = newTorqueNm;
    thrustN = newThrustN;
    feedForceN = Math.max(newThrustN, newTorqueNm * 50);
    return this;
  }

  /** Finished. */
  public Operation done() {
    CutSpec cut =
        new CutSpec(
            turnsCount,
            fixedS,
            turnsCount > 0 ? 1 : 0,
            lowestRevPerMin,
            highestRevPerMin,
            "cutting speed",
            0,
            20,
            0.1,
            1,
            1,
            10,
            4,
            new TaylorConstants(0.25, 300));
    return new Operation(
        id,
        "feature of " + id,
        kind,
        kind.words() + " " + id,
        end,
        slides,
        equipment,
        condition,
        tool(),
        cut,
        new Loads(torqueNm * 100, thrustN, 0, torqueNm, 0, feedForceN),
        List.of(),
        "test",
        "test",
        List.of());
  }

  private static Tool tool() {
    return new ToolFamily(
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
            "invented")
        .tool(10);
  }
}
