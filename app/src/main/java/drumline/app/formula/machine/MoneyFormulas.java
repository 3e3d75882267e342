package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.ANY;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.aboveTo;
import static drumline.app.formula.Allowed.atLeast;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.DENSITY;
import static drumline.app.formula.Measure.HOURS;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MASS;
import static drumline.app.formula.Measure.MONEY;
import static drumline.app.formula.Measure.MONEY_PER_HOUR;
import static drumline.app.formula.Measure.MONEY_PER_KWH;
import static drumline.app.formula.Measure.PER_HOUR;
import static drumline.app.formula.Measure.POWER;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SECTION;
import static drumline.app.formula.Measure.SHARE;
import static drumline.app.formula.Measure.VOLUME;
import static drumline.app.formula.Measure.YEARS;
import static drumline.app.formula.Topic.OUTPUT_AND_MONEY;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.economics.bar.BarStock;
import drumline.economics.bar.BarYield;
import drumline.economics.cost.BreakEven;
import drumline.economics.cost.CostLine;
import drumline.economics.invest.EconomicLot;
import drumline.economics.invest.FixtureInvestment;
import drumline.economics.invest.HourRateCase;
import drumline.economics.invest.MachineHourRate;
import drumline.economics.invest.NetPresentValue;
import drumline.economics.output.BarStop;
import drumline.economics.output.Effectiveness;
import drumline.economics.output.Output;
import drumline.economics.output.StopLoss;
import drumline.economics.output.YearPlan;
import drumline.shop.machine.BarFeed.Loading;
import java.util.List;

/** Bars, output and money. */
final class MoneyFormulas {
  private MoneyFormulas() {}

  static List<Formula> all() {
    return List.of(
        bar(),
        output(),
        barStop(),
        effectiveness(),
        rate(),
        breakEven(),
        lot(),
        present(),
        fixture());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(OUTPUT_AND_MONEY, name, title);
  }

  private static Formula bar() {
    return draft("bar-yield", "pieces from a bar, yield, and mass of bar and chips for each piece")
        .law("loads = ⌈L/longest⌉; pieces = ⌊(L/loads − remnant − first)/(l + facing + kerf)⌋")
        .in("barLength", LENGTH, "length L as bought", ABOVE_0)
        .in("longestLoad", LENGTH, "longest bar that the machine loads", ABOVE_0, "6000 mm")
        .in("remnant", LENGTH, "shortest end from which no piece can be made", FROM_0)
        .in("firstFacing", LENGTH, "cut off the sawn end of each bar", FROM_0, "0 mm")
        .in("pieceLength", LENGTH, "length l of the piece", ABOVE_0)
        .in("facing", LENGTH, "faced off each piece, both ends together", FROM_0, "0 mm")
        .in("kerf", LENGTH, "width of the cut-off tool", FROM_0)
        .in("area", SECTION, "cross-section of the bar", ABOVE_0)
        .in("density", DENSITY, "density", ABOVE_0, "7.85 kg/dm3")
        .in("partVolume", VOLUME, "volume of the finished piece", ABOVE_0)
        .source("division; worked by hand in the engineering basis [BASIS] 7.3")
        .example(
            "barLength=3000mm remnant=120mm pieceLength=30mm kerf=2.5mm area=314.16mm²"
                + " partVolume=6000mm³")
        .by(
            v -> {
              BarYield yield =
                  BarYield.of(
                      new BarStock(
                          v.num("barLength"),
                          v.num("longestLoad"),
                          v.num("remnant"),
                          v.num("firstFacing"),
                          v.num("pieceLength"),
                          v.num("facing"),
                          v.num("kerf"),
                          v.num("area"),
                          v.num("density"),
                          v.num("partVolume")));
              return Answer.of("pieces of each loaded bar", COUNT, yield.piecesPerLoadCount())
                  .step("bars loaded from one bought", COUNT, yield.loadsPerBarCount())
                  .step("length loaded", LENGTH, yield.loadedLengthMm())
                  .result("length that ends in pieces", SHARE, yield.yieldPct())
                  .result("bar bought for a piece", MASS, yield.boughtKgPerPiece())
                  .result("chips and ends of a piece", MASS, yield.scrapKgPerPiece())
                  .result("bars for 1000 pieces", AMOUNT, yield.barsPer1000Count());
            },
            BarYield.class);
  }

  private static Formula output() {
    return draft("output", "pieces in an hour from cycle and stops")
        .law("gross 3600·q/T; net 3600/(T/q + Σ d)·A·(1 − s)")
        .in("cycle", SECONDS, "cycle T from one index to the next", ABOVE_0)
        .in("piecesPerIndex", COUNT, "finished pieces q at each index", between(1, 8), "1")
        .in("stops", SECONDS, "stops for bars and tools, for each piece", FROM_0, "0 s")
        .in(
            "availability",
            SHARE,
            "availability A: breakdowns and waiting only",
            aboveTo(0, 100),
            "100 %")
        .in("scrap", SHARE, "share s of scrap", between(0, 99), "0 %")
        .in("plannedHours", HOURS, "planned hours of a year", ABOVE_0, "4000 h")
        .source(
            "[GRO-DOWN], [GRO-30]: Tp = Tc + F·Td; availability and quality [ISO-22400-2], from memory")
        .example("cycle=35s stops=15s")
        .by(
            v -> {
              Output output =
                  Output.of(
                      v.num("cycle"),
                      v.count("piecesPerIndex"),
                      List.of(new StopLoss("stops", v.num("stops"))),
                      v.num("availability"),
                      v.num("scrap"),
                      new YearPlan(1, 1, v.num("plannedHours"), 0, 0));
              return Answer.of("net pieces", PER_HOUR, output.netPerHour())
                  .step("gross pieces", PER_HOUR, output.grossPerHour())
                  .result("net to gross", SHARE, output.efficiencyPct())
                  .result(
                      "good pieces of the planned hours, set-up aside",
                      COUNT,
                      Math.floor(output.netPerHour() * v.num("plannedHours")));
            },
            Output.class);
  }

  private static Formula barStop() {
    return draft("bar-stop", "time that new bars cost each piece")
        .law("d = t/n stopped, max(0, t − T)/n in the shadow of the cycle")
        .in("change", SECONDS, "time t to load one bar", FROM_0)
        .in("cycle", SECONDS, "cycle T", ABOVE_0)
        .in("pieces", COUNT, "pieces n of one loaded bar", atLeast(1))
        .choice("loading", "how bars are loaded", Loading.STOPPED)
        .source("derived, [BASIS] 7.3")
        .example("change=20s cycle=5s pieces=88")
        .by(
            v ->
                Answer.of(
                    "for each piece",
                    SECONDS,
                    BarStop.of(
                            v.choice("loading", Loading.class),
                            v.num("change"),
                            v.num("cycle"),
                            v.count("pieces"))
                        .perPieceS()),
            BarStop.class);
  }

  private static Formula effectiveness() {
    return draft("effectiveness", "overall equipment effectiveness")
        .law("OEE = (loading − lost)/loading·performance·quality")
        .in("loading", HOURS, "hours in which the machine should run", ABOVE_0)
        .in("lost", HOURS, "hours of it that it stood", FROM_0)
        .in("performance", SHARE, "speed against the ideal cycle", aboveTo(0, 100))
        .in("quality", SHARE, "good pieces", between(0, 100))
        .source("[ISO-22400-2] from memory; worked example [SLACK]")
        .example("loading=80h lost=9h performance=98% quality=96%")
        .by(
            v ->
                Answer.of(
                    "effectiveness",
                    SHARE,
                    Effectiveness.pct(
                        v.num("loading"), v.num("lost"), v.num("performance"), v.num("quality"))),
            Effectiveness.class);
  }

  private static Formula rate() {
    return draft("machine-hour-rate", "what an hour of a machine costs")
        .law("replacement/(life·h) + ½·price·i/h + maintenance/h + kW·price + space/h + tools")
        .in("replacement", MONEY, "price of a like machine when this one is worn out", ABOVE_0)
        .in("price", MONEY, "price paid", FROM_0)
        .in("life", YEARS, "years of use", ABOVE_0)
        .in("hours", HOURS, "hours that it runs in a year", ABOVE_0)
        .in("interest", SHARE, "interest on half the price", between(0, 100))
        .in("maintenance", MONEY, "maintenance in a year", FROM_0)
        .in("power", POWER, "mean power drawn", FROM_0)
        .in("energy", MONEY_PER_KWH, "price of energy", FROM_0)
        .in("space", MONEY, "floor space in a year", FROM_0)
        .in("tools", MONEY_PER_HOUR, "tools not charged to the piece", FROM_0)
        .source("[HAUFE] (logic of VDI 3258); worked examples [ABWL], [STUDY]")
        .example(
            "replacement=1050000EUR price=800000EUR life=10 hours=3600h interest=15%"
                + " maintenance=9000EUR power=14kW energy=0.35EUR/kWh space=160EUR tools=17.5333EUR/h")
        .by(
            v -> {
              MachineHourRate rate =
                  MachineHourRate.of(
                      new HourRateCase(
                          v.money("replacement"),
                          v.money("price"),
                          v.num("life"),
                          v.num("hours"),
                          v.num("interest"),
                          v.money("maintenance"),
                          v.num("power"),
                          v.money("energy"),
                          v.money("space"),
                          v.money("tools")));
              return Answer.NONE
                  .result("an hour", MONEY_PER_HOUR, rate.total())
                  .result("of it write-off", MONEY_PER_HOUR, rate.writeOff())
                  .result("of it interest", MONEY_PER_HOUR, rate.interest())
                  .result("of it maintenance", MONEY_PER_HOUR, rate.maintenance())
                  .result("of it energy", MONEY_PER_HOUR, rate.energy());
            },
            MachineHourRate.class);
  }

  private static Formula breakEven() {
    return draft("break-even", "quantity at which two ways of making cost the same")
        .law("N = (F2 − F1)/(k1 − k2)")
        .in("firstFixed", MONEY, "fixed cost F1 of the first way", FROM_0)
        .in("firstPiece", MONEY, "cost k1 of each piece the first way", FROM_0)
        .in("secondFixed", MONEY, "fixed cost F2 of the second way", FROM_0)
        .in("secondPiece", MONEY, "cost k2 of each piece the second way", FROM_0)
        .source("[SHARMA] 5.30, [LEMBKE]")
        .example("firstFixed=12000INR firstPiece=6INR secondFixed=48000INR secondPiece=1.2INR")
        .by(
            v -> {
              BreakEven found =
                  BreakEven.between(
                      new CostLine("the first way", v.money("firstFixed"), v.money("firstPiece")),
                      new CostLine(
                          "the second way", v.money("secondFixed"), v.money("secondPiece")));
              Answer answer =
                  found.piecesCount().isPresent()
                      ? Answer.of("pieces", AMOUNT, found.piecesCount().getAsDouble())
                      : Answer.NONE;
              return answer.result("that is", found.words());
            },
            BreakEven.class);
  }

  private static Formula lot() {
    return draft("economic-lot", "lot at which set-up and stock together cost least")
        .law("N = √(2·A·R/(i·C))")
        .in("perYear", AMOUNT, "pieces A in a year", ABOVE_0)
        .in("setUp", MONEY, "cost R of one set-up", FROM_0)
        .in("pieceCost", MONEY, "cost C of a piece", ABOVE_0)
        .in(
            "stock",
            SHARE,
            "share i of the piece's cost that a year in stock costs",
            aboveTo(0, 100))
        .source("[SHARMA] ch. 5; example of our own, without price breaks")
        .example("perYear=400000 setUp=600EUR pieceCost=1.10EUR stock=20%")
        .by(
            v -> {
              double setUp = v.money("setUp").doubleValue();
              double piece = v.money("pieceCost").doubleValue();
              double lot = EconomicLot.piecesCount(v.num("perYear"), setUp, piece, v.num("stock"));
              return Answer.of("pieces in a lot", AMOUNT, lot)
                  .result(
                      "lots in a year",
                      AMOUNT,
                      lot > 0 ? v.num("perYear") / lot : Double.POSITIVE_INFINITY);
            },
            EconomicLot.class);
  }

  private static Formula present() {
    return draft("present-value", "net present value of payments over years")
        .law("NPV = −I + Σ CF/(1 + i)^t")
        .in("paidAtOnce", MONEY, "price I paid at once", FROM_0)
        .several("cash", MONEY, "payments at the end of years 1, 2, …", ANY)
        .in("interest", SHARE, "interest i", between(0, 100))
        .source("[SHARMA] 5.3, whose answers come from four-digit tables")
        .example("paidAtOnce=0INR cash=21240INR:21240INR:21240INR:21240INR:29240INR interest=10%")
        .by(
            v ->
                Answer.NONE.result(
                    "net present value",
                    MONEY,
                    NetPresentValue.of(v.money("paidAtOnce"), v.moneys("cash"), v.num("interest"))),
            NetPresentValue.class);
  }

  private static Formula fixture() {
    return draft("fixture-pieces", "pieces a year that pay for a fixture or attachment")
        .law("N = (price·shares + set-ups)/(saving·(1 + overhead))")
        .in("price", MONEY, "price of the fixture", FROM_0)
        .in("saving", MONEY, "saving of direct labour for each piece", ABOVE_0)
        .in("overhead", SHARE, "overhead on labour", between(0, 1000))
        .in(
            "yearlyShare",
            SHARE,
            "interest, taxes, maintenance and write-off of a year",
            aboveTo(0, 1000))
        .in("runs", AMOUNT, "runs in a year", FROM_0, "1")
        .in("setUp", MONEY, "cost of a set-up", FROM_0)
        .source("[SHARMA] 5.20 and 5.25")
        .example("price=3000INR saving=1.5INR overhead=55% yearlyShare=67% setUp=50INR")
        .by(
            v ->
                Answer.of(
                    "pieces in a year",
                    AMOUNT,
                    new FixtureInvestment(
                            v.money("saving").doubleValue(),
                            v.num("overhead"),
                            v.num("yearlyShare"),
                            v.num("runs"),
                            v.money("setUp").doubleValue())
                        .piecesCount(v.money("price").doubleValue())),
            FixtureInvestment.class);
  }
}
