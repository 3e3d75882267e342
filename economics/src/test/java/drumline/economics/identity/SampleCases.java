package drumline.economics.identity;

import drumline.economics.bar.BarStock;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.output.YearPlan;
import drumline.economics.study.MachineTerms;
import drumline.economics.study.MoneyCase;
import drumline.economics.tool.ToolWear;
import drumline.shop.machine.BarFeed.Loading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Money cases of our own invention, drawn from a seed. */
final class SampleCases {
  private SampleCases() {}

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  static MoneyCase draw(long seed) {
    Random random = new Random(seed);
    return new MoneyCase(
        "EUR",
        between(random, 2, 30),
        1 + random.nextInt(2),
        stock(random),
        new MaterialPrice(money(random, 1, 30), money(random, 0, 1)),
        tools(random),
        machine(random),
        new HourRates(
            money(random, 20, 200),
            money(random, 20, 60),
            between(random, 0.5, 4),
            money(random, 40, 200)),
        new YearPlan(
            10_000 + random.nextInt(3_000_000),
            1_000 + random.nextInt(100_000),
            between(random, 1500, 8000),
            between(random, 1, 24),
            random.nextInt(50)),
        between(random, 0, 8),
        between(random, 0, 4));
  }

  static BarStock stock(Random random) {
    double diameter = between(random, 6, 50);
    double area = Math.PI * diameter * diameter / 4;
    double length = between(random, 3, 120);
    return new BarStock(
        between(random, 2000, 6500),
        between(random, 1000, 4200),
        between(random, 20, 200),
        between(random, 0, 6),
        length,
        between(random, 0, 0.6),
        between(random, 1, 4),
        area,
        between(random, 1.7, 8.9),
        area * length * between(random, 0.2, 0.95));
  }

  static List<ToolWear> tools(Random random) {
    return IntStream.range(0, 1 + random.nextInt(20))
        .mapToObj(
            i ->
                new ToolWear(
                    "op-" + i,
                    "tool " + i,
                    between(random, 0.3, 15),
                    between(random, 10, 480),
                    ToolWear.LifeLimit.WEAR,
                    money(random, 1, 80),
                    between(random, 0.5, 15)))
        .toList();
  }

  private static MachineTerms machine(Random random) {
    return new MachineTerms(
        "six spindles",
        money(random, 200_000, 1_500_000),
        money(random, 0, 200_000),
        money(random, 20, 200),
        between(random, 1, 24),
        between(random, 0.5, 4),
        between(random, 70, 99),
        random.nextBoolean() ? Loading.IN_SHADOW : Loading.STOPPED,
        between(random, 0, 90));
  }

  static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static BigDecimal money(Random random, double low, double high) {
    return BigDecimal.valueOf(between(random, low, high)).setScale(2, RoundingMode.HALF_EVEN);
  }
}
