package drumline.app.formula.machine;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Allowed.FROM_0;
import static drumline.app.formula.Allowed.between;
import static drumline.app.formula.Allowed.inside;
import static drumline.app.formula.Measure.AMOUNT;
import static drumline.app.formula.Measure.COUNT;
import static drumline.app.formula.Measure.FACTOR;
import static drumline.app.formula.Measure.FEED;
import static drumline.app.formula.Measure.LENGTH;
import static drumline.app.formula.Measure.MINUTES;
import static drumline.app.formula.Measure.MONEY;
import static drumline.app.formula.Measure.MONEY_PER_HOUR;
import static drumline.app.formula.Measure.SECONDS;
import static drumline.app.formula.Measure.SPEED;
import static drumline.app.formula.Topic.TOOL_LIFE;

import drumline.app.formula.Answer;
import drumline.app.formula.Formula;
import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.life.CommonSpeedEconomy;
import drumline.cutting.life.EconomicToolLife;
import drumline.cutting.life.ExtendedToolLife;
import drumline.cutting.life.PiecesPerEdge;
import drumline.cutting.life.SlackToolLife;
import drumline.cutting.life.SpeedCost;
import drumline.cutting.life.TaylorToolLife;
import drumline.cutting.life.ToolChangeLoss;
import drumline.cutting.tables.TaylorTable;
import drumline.cutting.validity.Validity;
import java.util.ArrayList;
import java.util.List;

/** How long edges last and which speed pays. */
final class LifeFormulas {
  private static final String TAYLOR =
      "[GM] problems 4.26 to 4.28; F. W. Taylor 1907; end of life usually 0.3 mm flank wear [ISO-3685]";

  private LifeFormulas() {}

  static List<Formula> all() {
    return List.of(
        taylor(),
        taylorSpeed(),
        fit(),
        extended(),
        pieces(),
        economic(),
        cost(),
        slack(),
        loss(),
        grouped(),
        common());
  }

  private static FormulaDraft draft(String name, String title) {
    return Formula.named(TOOL_LIFE, name, title);
  }

  private static FormulaDraft law(FormulaDraft draft) {
    return draft
        .in("exponent", FACTOR, "Taylor's n", inside(0, 1))
        .usual(between(0.08, 0.7), "no tool material of the trade")
        .in("oneMinuteSpeed", SPEED, "speed C for a life of one minute", ABOVE_0);
  }

  private static TaylorToolLife law(Values v) {
    return new TaylorToolLife(v.num("exponent"), v.num("oneMinuteSpeed"));
  }

  private static Formula taylor() {
    return draft("tool-life", "tool life at a cutting speed")
        .law("V·T^n = C; T = (C/V)^(1/n)")
        .with(LifeFormulas::law)
        .in("speed", SPEED, "cutting speed V", ABOVE_0)
        .source(TAYLOR)
        .example("exponent=0.25 oneMinuteSpeed=75m/min speed=27.42m/min")
        .by(
            v ->
                Answer.of("life T", MINUTES, law(v).lifeMin(v.num("speed")))
                    .noting(lifeRange(law(v).lifeMin(v.num("speed")))),
            TaylorToolLife.class);
  }

  private static Validity lifeRange(double lifeMin) {
    return Validity.of(
        "tool life", lifeMin, 2, 1000, "min", "far outside the tests that give the constants");
  }

  private static Formula taylorSpeed() {
    return draft("speed-for-life", "cutting speed for a wanted tool life")
        .law("V = C/T^n")
        .with(LifeFormulas::law)
        .in("life", MINUTES, "wanted life T", ABOVE_0)
        .source(TAYLOR)
        .example("exponent=0.25 oneMinuteSpeed=75m/min life=56min")
        .by(
            v ->
                Answer.of("cutting speed V", SPEED, law(v).speedMPerMin(v.num("life")))
                    .noting(lifeRange(v.num("life"))),
            TaylorToolLife.class,
            TaylorTable.class);
  }

  private static Formula fit() {
    return draft("taylor-fit", "Taylor's constants from two tests")
        .law("n = ln(V1/V2)/ln(T2/T1); C = V1·T1^n")
        .in("firstSpeed", SPEED, "speed V1", ABOVE_0)
        .in("firstLife", MINUTES, "life T1", ABOVE_0)
        .in("secondSpeed", SPEED, "speed V2", ABOVE_0)
        .in("secondLife", MINUTES, "life T2", ABOVE_0)
        .source(TAYLOR + "; example from memory")
        .example("firstSpeed=160m/min firstLife=5min secondSpeed=100m/min secondLife=41min")
        .by(
            v -> {
              TaylorToolLife life =
                  TaylorToolLife.through(
                      v.num("firstSpeed"),
                      v.num("firstLife"),
                      v.num("secondSpeed"),
                      v.num("secondLife"));
              return Answer.of("exponent n", FACTOR, life.exponentRatio())
                  .result("one-minute speed C", SPEED, life.oneMinuteMPerMin());
            },
            TaylorToolLife.class);
  }

  private static Formula extended() {
    return draft("extended-tool-life", "tool life by speed, feed and depth from one known life")
        .law("T = T0·(V0/V)^(1/n)·(f0/f)^(1/n1)·(a0/ap)^(1/n2)")
        .in("speedPower", FACTOR, "power 1/n of the speed", ABOVE_0, "4")
        .in("feedPower", FACTOR, "power 1/n1 of the feed", ABOVE_0, "2")
        .in("depthPower", FACTOR, "power 1/n2 of the depth", FROM_0, "0.7")
        .in("knownSpeed", SPEED, "speed V0 of the known life", ABOVE_0)
        .in("knownFeed", FEED, "feed f0 of the known life", ABOVE_0)
        .in("knownDepth", LENGTH, "depth a0 of the known life", ABOVE_0)
        .in("knownLife", MINUTES, "the known life T0", ABOVE_0)
        .in("speed", SPEED, "cutting speed V", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("depth", LENGTH, "depth ap", ABOVE_0)
        .source("[EXPM2] for the form; default powers from memory, unverified")
        .example(
            "knownSpeed=200m/min knownFeed=0.2mm/rev knownDepth=1mm knownLife=20min speed=180m/min"
                + " feed=0.25mm/rev depth=1mm")
        .by(
            v ->
                Answer.of(
                    "life T",
                    MINUTES,
                    new ExtendedToolLife(
                            v.num("speedPower"),
                            v.num("feedPower"),
                            v.num("depthPower"),
                            v.num("knownSpeed"),
                            v.num("knownFeed"),
                            v.num("knownDepth"),
                            v.num("knownLife"))
                        .lifeMin(v.num("speed"), v.num("feed"), v.num("depth"))),
            ExtendedToolLife.class);
  }

  private static FormulaDraft use(FormulaDraft draft) {
    return draft
        .in("life", MINUTES, "tool life T, time in cut", ABOVE_0)
        .in("cut", SECONDS, "time t in cut for each piece", ABOVE_0);
  }

  private static Formula pieces() {
    return draft("pieces-per-edge", "pieces that one edge makes before it is changed")
        .law("N = T/t, whole pieces only")
        .with(LifeFormulas::use)
        .source("definition; idle time does not wear")
        .example("life=15min cut=4.2s")
        .by(
            v ->
                Answer.of(
                        "whole pieces",
                        COUNT,
                        (double) PiecesPerEdge.wholeCount(v.num("life"), v.num("cut")))
                    .result(
                        "on the mean",
                        AMOUNT,
                        PiecesPerEdge.meanCount(v.num("life"), v.num("cut"))),
            PiecesPerEdge.class);
  }

  private static FormulaDraft money(FormulaDraft draft) {
    return draft
        .in("change", MINUTES, "time tc to change the edge", FROM_0)
        .in("edgePrice", MONEY, "price y of one edge, or of one regrind", FROM_0)
        .in("machineRate", MONEY_PER_HOUR, "cost of an hour of machine and labour", ABOVE_0);
  }

  private static Formula economic() {
    return draft("economic-tool-life", "tool life of least cost and of most pieces, one tool alone")
        .law("T = (1/n − 1)·(tc + y/x) cheapest, (1/n − 1)·tc fastest; V = C/T^n")
        .with(LifeFormulas::law)
        .with(LifeFormulas::money)
        .source(TAYLOR)
        .example(
            "exponent=0.25 oneMinuteSpeed=75m/min change=2min edgePrice=2.50USD machineRate=9USD/h")
        .by(
            v -> {
              EconomicToolLife life = new EconomicToolLife(v.num("exponent"), v.num("change"));
              double cheapestMin = life.cheapestMin(v.money("edgePrice"), v.money("machineRate"));
              Answer answer =
                  Answer.of("cheapest life", MINUTES, cheapestMin)
                      .result("cheapest speed", SPEED, law(v).speedMPerMin(cheapestMin))
                      .result("fastest life", MINUTES, life.fastestMin());
              return life.fastestMin() > 0
                  ? answer.result("fastest speed", SPEED, law(v).speedMPerMin(life.fastestMin()))
                  : answer;
            },
            EconomicToolLife.class);
  }

  private static Formula cost() {
    return draft("speed-cost", "cost of a piece as one tool's cutting speed changes")
        .law("k = k0 + x·(t0 + t) + (t/T)·(y + x·tc), t = s/(1000·V), s = π·d·l/f")
        .with(LifeFormulas::law)
        .with(LifeFormulas::money)
        .in("diameter", LENGTH, "diameter d", ABOVE_0)
        .in("length", LENGTH, "length l in cut", ABOVE_0)
        .in("feed", FEED, "feed f", ABOVE_0)
        .in("idle", MINUTES, "time t0 of each piece outside the cut", FROM_0)
        .in("fixed", MONEY, "cost k0 of each piece whatever the speed", FROM_0)
        .in("speed", SPEED, "cutting speed V", ABOVE_0)
        .source(
            "[GM] problem 4.27 with each tool's own exponent, the change charged once a piece there")
        .example(
            "exponent=0.16 oneMinuteSpeed=76m/min change=1min edgePrice=2USD machineRate=15USD/h"
                + " diameter=30mm length=300mm feed=0.25mm/rev idle=1min fixed=3USD speed=41.01m/min")
        .by(
            v -> {
              SpeedCost cost =
                  new SpeedCost(
                      law(v),
                      v.num("change"),
                      v.num("idle"),
                      SpeedCost.turningWayMm(v.num("diameter"), v.num("length"), v.num("feed")),
                      v.money("fixed"),
                      v.money("edgePrice"),
                      v.money("machineRate"));
              double cheapest = cost.cheapestMPerMin();
              return Answer.NONE
                  .result("cost of a piece", MONEY, cost.perPiece(v.num("speed")))
                  .result("cheapest speed", SPEED, cheapest)
                  .result("cost at the cheapest speed", MONEY, cost.perPiece(cheapest));
            },
            SpeedCost.class);
  }

  private static Formula slack() {
    return draft("slack-tool-life", "what a tool that does not govern gains when it is slowed")
        .law("s = t/tcycle; life grows by s^(−1/n), pieces for each edge by s^(1 − 1/n)")
        .in("exponent", FACTOR, "Taylor's n", inside(0, 1))
        .in("cut", SECONDS, "time t in cut now", ABOVE_0)
        .in("allowed", SECONDS, "time that it may take", ABOVE_0)
        .source("Taylor's law, rule of [HITOMI]; keep the speed window's lower end: built-up edge")
        .example("exponent=0.25 cut=3s allowed=4.4s")
        .by(
            v -> {
              SlackToolLife life =
                  new SlackToolLife(v.num("exponent"), v.num("cut"), v.num("allowed"));
              return Answer.of("factor on the speed", FACTOR, life.speedRatio())
                  .result("factor on the life", FACTOR, life.lifeRatio())
                  .result("factor on the pieces", FACTOR, life.piecesRatio());
            },
            SlackToolLife.class);
  }

  private static Formula loss() {
    return draft("tool-change-loss", "time that changing a tool costs each piece")
        .law("d = tc·t/T")
        .with(LifeFormulas::use)
        .in("change", MINUTES, "time tc of the change", FROM_0)
        .source("derived; the single law is that of [GRO-DOWN]")
        .example("life=90min cut=4.2s change=6min")
        .by(
            v ->
                Answer.of(
                    "for each piece",
                    SECONDS,
                    new ToolChangeLoss(v.num("cut"), v.num("life"), v.num("change")).perPieceS()),
            ToolChangeLoss.class);
  }

  private static Formula grouped() {
    return draft(
            "grouped-change-loss", "tool changes each alone, against all of a group at one stop")
        .law("separate Σ tc·t/T; grouped: all at the shortest life, one stop")
        .several("cuts", SECONDS, "times in cut for each piece", ABOVE_0)
        .several("lives", MINUTES, "tool lives, one for each cut", ABOVE_0)
        .several("changes", MINUTES, "times to change, one for each cut", FROM_0)
        .choice("crew", "how the stop is worked off", ToolChangeLoss.Crew.ONE_AFTER_THE_OTHER)
        .in("restart", MINUTES, "time to stop, restart and check the first piece", FROM_0, "2 min")
        .source("derived; [GRO-DOWN] for one tool")
        .example("cuts=4.2s:3s:3.6s lives=90min:60min:60min changes=6min:4min:8min")
        .by(
            v -> {
              List<Double> cuts = v.nums("cuts");
              DriveFormulas.requireAsMany("lives", v.nums("lives").size(), cuts.size());
              DriveFormulas.requireAsMany("changes", v.nums("changes").size(), cuts.size());
              List<ToolChangeLoss> tools = new ArrayList<>();
              for (int i = 0; i < cuts.size(); i++) {
                tools.add(
                    new ToolChangeLoss(
                        cuts.get(i), v.nums("lives").get(i), v.nums("changes").get(i)));
              }
              return Answer.of(
                      "grouped, for each piece",
                      SECONDS,
                      ToolChangeLoss.groupedS(
                          tools, v.choice("crew", ToolChangeLoss.Crew.class), v.num("restart")))
                  .result("separate, without restarts", SECONDS, ToolChangeLoss.separateS(tools));
            },
            ToolChangeLoss.class);
  }

  private static Formula common() {
    return draft("common-speed", "best common speed of a machine whose tools all share one speed")
        .law("Σ Aj·(1/nj − 1)·s^(1/nj) = x·t0, Aj = (yj + x·tcj)·tj/Tj; fastest with yj = 0")
        .several("exponents", FACTOR, "Taylor's n of each tool", inside(0, 1))
        .several("cuts", SECONDS, "times in cut for each piece at s = 1", ABOVE_0)
        .several("lives", MINUTES, "tool lives at s = 1", ABOVE_0)
        .several("changes", MINUTES, "times to change", FROM_0)
        .several("edgePrices", MONEY, "prices of an edge", FROM_0)
        .in("machineRate", MONEY_PER_HOUR, "cost of an hour of machine and labour", ABOVE_0)
        .in("governingCut", SECONDS, "cut t0 of the governing position at s = 1", ABOVE_0)
        .source("derived; reduces to economic-tool-life for one tool")
        .example(
            "exponents=0.25:0.2 cuts=4.2s:3s lives=90min:60min changes=6min:4min"
                + " edgePrices=5EUR:12EUR machineRate=60EUR/h governingCut=4.2s")
        .by(LifeFormulas::common, CommonSpeedEconomy.class);
  }

  private static Answer common(Values v) {
    int count = v.nums("cuts").size();
    for (String key : List.of("exponents", "lives", "changes")) {
      DriveFormulas.requireAsMany(key, v.nums(key).size(), count);
    }
    DriveFormulas.requireAsMany("edgePrices", v.moneys("edgePrices").size(), count);
    List<CommonSpeedEconomy.SharedTool> tools = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      tools.add(
          new CommonSpeedEconomy.SharedTool(
              v.nums("exponents").get(i),
              v.nums("cuts").get(i),
              v.nums("lives").get(i),
              v.nums("changes").get(i),
              v.moneys("edgePrices").get(i)));
    }
    CommonSpeedEconomy economy = new CommonSpeedEconomy(tools, v.num("governingCut"));
    double cheapest = economy.cheapestRatio(v.money("machineRate"));
    double fastest = economy.fastestRatio();
    Answer answer =
        Answer.of("cheapest factor on all speeds", FACTOR, cheapest)
            .result("cut and changes for each piece there", SECONDS, economy.perPieceS(cheapest));
    return Double.isFinite(fastest)
        ? answer
            .result("fastest factor on all speeds", FACTOR, fastest)
            .result("cut and changes there", SECONDS, economy.perPieceS(fastest))
        : answer.result("fastest factor on all speeds", "without limit: no change takes time");
  }
}
