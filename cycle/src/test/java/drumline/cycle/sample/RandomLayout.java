package drumline.cycle.sample;

import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A route with a layout, drawn from a seed: some layouts are good, most are not, all can be put on
 * the clock.
 *
 * @param route operations {@code op0}… and the cut-off last
 * @param layout places on the machine
 */
public record RandomLayout(Route route, Layout layout) {
  private static final double[] SPEEDS = {1500, 2400, 4000};

  /** Draws so many operations and a cut-off for the machine. */
  public static RandomLayout draw(long seed, Machine machine, int operationCount) {
    Random random = new Random(seed);
    List<ToolSlide> slides = machine.drumSlides().toList();
    List<Operation> operations = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    for (int k = 0; k < operationCount; k++) {
      Operation operation = operation(random, "op" + k);
      operations.add(operation);
      String slide = slides.get(random.nextInt(slides.size())).id();
      double n = operation.condition() == SpindleCondition.TURNING ? pick(random) : 0;
      placements.add(new Placement(operation.id(), slide, n, 5 * random.nextDouble()));
    }
    operations.add(OperationSample.cutOff(40));
    String last = machine.lastPosition() + "-cross";
    placements.add(new Placement("cut-off", last, pick(random), random.nextDouble()));
    List<OrderRule> orders = orders(random, operationCount);
    List<PairRule> pairs = pairs(random, operationCount);
    return new RandomLayout(
        new Route(operations, orders, pairs, List.of()), new Layout(machine.name(), placements));
  }

  private static Operation operation(Random random, String id) {
    SpindleCondition condition =
        switch (random.nextInt(7)) {
          case 0 -> SpindleCondition.HELD;
          case 1 -> SpindleCondition.C_AXIS;
          case 2 -> SpindleCondition.TURNING_ANY;
          default -> SpindleCondition.TURNING;
        };
    double turns = condition == SpindleCondition.TURNING ? 10 + random.nextInt(90) : 0;
    double fixedS = condition == SpindleCondition.TURNING ? 0 : 0.3 + random.nextDouble();
    Operation operation =
        OperationSample.operation(
            id,
            random.nextBoolean() ? OperationKind.DRILL : OperationKind.FINISH_TURN,
            condition,
            OperationSample.cut(turns, fixedS, 2 + random.nextInt(30)));
    // At 4000 rev/min the spindle gives 23.9 Nm and the collet, with safety 2 and 18.6 kN left,
    // holds 1395 N at a 20 mm bar; 10 Nm and 200 N are 1020 N: none exceeds a limit alone.
    return OperationSample.withLoads(
        operation, 10 * random.nextDouble(), 200 * random.nextDouble());
  }

  private static double pick(Random random) {
    return SPEEDS[random.nextInt(SPEEDS.length)];
  }

  private static List<OrderRule> orders(Random random, int operationCount) {
    List<OrderRule> orders = new ArrayList<>();
    for (int k = 0; k + 1 < operationCount; k += 2) {
      int after = k + 1 + random.nextInt(operationCount - k - 1);
      orders.add(new OrderRule("op" + k, "op" + after, "drawn", "test"));
    }
    return orders;
  }

  private static List<PairRule> pairs(Random random, int operationCount) {
    List<PairRule> pairs = new ArrayList<>();
    for (int k = 0; k + 3 < operationCount; k += 3) {
      int other = k + 1 + random.nextInt(operationCount - k - 1);
      pairs.add(new PairRule(PairRule.Kind.NOT_TOGETHER, "op" + k, "op" + other, "drawn", "test"));
    }
    return pairs;
  }
}
