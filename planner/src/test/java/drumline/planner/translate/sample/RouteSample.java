package drumline.planner.translate.sample;

import drumline.shop.machine.Equipment;
import drumline.shop.machine.SlideKind;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented routes of pins with a bore, a thread, flats and work from the back. */
public final class RouteSample {
  private RouteSample() {}

  /** Twelve operations of every kind that the planner treats differently. */
  public static Route pin() {
    List<Operation> operations =
        List.of(
            new OperationDraft("face", OperationKind.FACE)
                .turns(60, 400, 3500)
                .from(SlideKind.CROSS)
                .loads(3, 200)
                .done(),
            new OperationDraft("rough", OperationKind.ROUGH_TURN)
                .turns(140, 400, 3000)
                .from(SlideKind.CROSS)
                .loads(7, 350)
                .done(),
            new OperationDraft("drill", OperationKind.DRILL)
                .turns(150, 400, 4200)
                .from(SlideKind.END)
                .loads(3, 900)
                .done(),
            new OperationDraft("bore", OperationKind.FINISH_BORE)
                .turns(120, 400, 4800)
                .from(SlideKind.END)
                .loads(1, 80)
                .done(),
            new OperationDraft("groove", OperationKind.GROOVE)
                .turns(40, 400, 2600)
                .from(SlideKind.CROSS)
                .loads(5, 0)
                .done(),
            new OperationDraft("finish", OperationKind.FINISH_TURN)
                .turns(160, 400, 4000.7)
                .from(SlideKind.CROSS)
                .loads(2, 100)
                .done(),
            new OperationDraft("thread", OperationKind.THREAD_TURN)
                .turns(90, 300, 1800)
                .from(SlideKind.CROSS)
                .loads(2, 50)
                .done(),
            new OperationDraft("tap", OperationKind.TAP)
                .fixed(SpindleCondition.TURNING_ANY, 1.4)
                .from(SlideKind.END)
                .loads(2, 100)
                .done(),
            new OperationDraft("flats", OperationKind.MILL_FLATS)
                .fixed(SpindleCondition.HELD, 1.6)
                .from(SlideKind.CROSS)
                .with(Equipment.LIVE_TOOL, Equipment.C_AXIS)
                .loads(3, 0)
                .done(),
            new OperationDraft("cut-off", OperationKind.CUT_OFF)
                .turns(110, 400, 5500)
                .from(SlideKind.CROSS)
                .loads(3, 0)
                .done(),
            new OperationDraft("back-face", OperationKind.FACE)
                .turns(50, 300, 4500)
                .at(WorkEnd.BACK)
                .loads(1, 100)
                .done(),
            new OperationDraft("chamfer", OperationKind.FINISH_TURN)
                .turns(20, 300, 4500)
                .at(WorkEnd.EITHER)
                .loads(1, 50)
                .done());
    List<OrderRule> orders =
        List.of(
            order("face", "drill"),
            order("rough", "finish"),
            order("rough", "groove"),
            order("drill", "bore"),
            order("drill", "tap"),
            order("finish", "thread"),
            order("finish", "flats"),
            order("cut-off", "back-face"));
    List<PairRule> pairs =
        List.of(
            new PairRule(PairRule.Kind.NOT_TOGETHER, "face", "rough", "tools meet", "test"),
            new PairRule(PairRule.Kind.SAME_POSITION, "bore", "finish", "runout", "test"),
            new PairRule(PairRule.Kind.OTHER_POSITION, "thread", "flats", "chips", "test"));
    return new Route(operations, orders, pairs, List.of());
  }

  /** A route drawn from a seed: so many operations in a few chains, and a cut-off. */
  public static Route drawn(long seed, int operationCount) {
    Random random = new Random(seed);
    List<Operation> operations = new ArrayList<>();
    List<OrderRule> orders = new ArrayList<>();
    for (int k = 0; k < operationCount; k++) {
      operations.add(operation(random, "op" + k));
      int before = k - 1 - random.nextInt(3);
      boolean isPossible = before >= 0 && operations.get(before).end() == WorkEnd.FRONT;
      if (isPossible && operations.get(k).end() != WorkEnd.BACK) {
        orders.add(order("op" + before, "op" + k));
      }
    }
    operations.add(
        new OperationDraft("cut-off", OperationKind.CUT_OFF)
            .turns(60 + random.nextInt(60), 400, 5500)
            .from(SlideKind.CROSS)
            .loads(3, 0)
            .done());
    return new Route(operations, orders, List.of(), List.of());
  }

  private static Operation operation(Random random, String id) {
    boolean isCross = random.nextBoolean();
    double turns = 20 + random.nextInt(130);
    double highest = 1500 + 4500 * random.nextDouble();
    OperationDraft draft =
        new OperationDraft(id, isCross ? OperationKind.FINISH_TURN : OperationKind.DRILL)
            .from(isCross ? SlideKind.CROSS : SlideKind.END)
            .turns(turns, 0.3 * highest, highest)
            .loads(4.5 * random.nextDouble(), 300 * random.nextDouble());
    return switch (random.nextInt(10)) {
      case 0 -> draft.turns(0, 0, 0).fixed(SpindleCondition.HELD, 0.5 + random.nextDouble()).done();
      case 1 ->
          draft.turns(0, 0, 0).fixed(SpindleCondition.C_AXIS, 0.5 + random.nextDouble()).done();
      case 2 ->
          draft
              .turns(0, 0, 0)
              .fixed(SpindleCondition.TURNING_ANY, 0.5 + random.nextDouble())
              .done();
      case 3 -> draft.at(WorkEnd.BACK).done();
      case 4 -> draft.at(WorkEnd.EITHER).done();
      default -> draft.done();
    };
  }

  private static OrderRule order(String beforeId, String afterId) {
    return new OrderRule(beforeId, afterId, afterId + " follows " + beforeId, "test");
  }
}
