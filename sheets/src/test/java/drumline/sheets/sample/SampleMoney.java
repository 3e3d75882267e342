package drumline.sheets.sample;

import drumline.economics.bar.BarStock;
import drumline.economics.cost.HourRates;
import drumline.economics.cost.MaterialPrice;
import drumline.economics.cost.Payback;
import drumline.economics.cost.Saving;
import drumline.economics.output.YearPlan;
import drumline.economics.study.MachineTerms;
import drumline.economics.study.MoneyCase;
import drumline.economics.study.MoneyStudy;
import drumline.economics.study.Sensitivity;
import drumline.economics.tool.ToolUse;
import drumline.economics.tool.ToolWear;
import drumline.sheets.Figures;
import drumline.sheets.content.KeyFigure;
import drumline.sheets.content.money.ComparisonTable;
import drumline.sheets.content.money.EquipmentRow;
import drumline.sheets.content.money.MoneyContent;
import drumline.sheets.content.money.MoneyLine;
import drumline.sheets.content.money.ToolRow;
import drumline.sheets.content.plain.Tone;
import drumline.shop.machine.BarFeed.Loading;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Money of the invented study. */
final class SampleMoney {
  private static final MoneyStudy STUDY = MoneyStudy.of(given());
  private static final Saving SAVING = Saving.of(STUDY.cost(), money("0.71"), 1_500_000);
  private static final Payback PAYBACK =
      Payback.of(STUDY.investment(), SAVING, STUDY.writeOffPerYear(8));

  private SampleMoney() {}

  private static MoneyCase given() {
    return new MoneyCase(
        "EUR",
        5.65,
        1,
        new BarStock(3000, 3300, 120, 3, 42, 0.5, 2.5, 804.2, 7.85, 12_400),
        new MaterialPrice(money("1.20"), money("0.22")),
        List.of(
            wear("10", "turning insert, rough", 2.9, 450, "2.40", 3),
            wear("20, 30", "carbide drill 8.8 mm", 4.4, 433, "22.00", 5),
            wear("35", "turning insert, finish", 3.0, 480, "2.60", 3),
            wear("40", "carbide drill 4 mm, driven", 2.5, 308, "14.00", 5),
            wear("50", "reamer 9 mm", 3.3, 480, "31.00", 5),
            wear("60", "cut-off blade 2.5 mm", 3.1, 315, "4.10", 4)),
        new MachineTerms(
            "Six spindles of the 32 mm class",
            money("980000"),
            money("42000"),
            money("96"),
            9,
            2,
            90,
            Loading.STOPPED,
            18),
        new HourRates(money("96"), money("38"), 2, money("110")),
        new YearPlan(1_500_000, 60_000, 3680, 9, 25),
        1.5,
        2);
  }

  static KeyFigure netOutput() {
    return new KeyFigure(
        "Net output",
        Figures.number(STUDY.output().netPerHour(), 0),
        "/h",
        "gross " + Figures.number(STUDY.output().grossPerHour(), 0) + "/h",
        Tone.PLAIN);
  }

  static KeyFigure pieceCost() {
    String cost = Figures.number(STUDY.cost().total(), 3);
    return new KeyFigure("Piece cost", cost, "EUR", "today 0.71 EUR", Tone.PLAIN);
  }

  static KeyFigure payback() {
    double months = PAYBACK.cashMonthsCount().orElseThrow();
    return new KeyFigure(
        "Payback",
        Figures.number(Math.ceil(months), 0),
        "months",
        "write-off added back",
        Tone.PLAIN);
  }

  static KeyFigure machines() {
    String load = "loaded to " + Figures.number(STUDY.output().loadPct(), 0) + " %";
    return new KeyFigure("Machines", "1", "", load, Tone.PLAIN);
  }

  private static String whole(BigDecimal amount) {
    return Figures.number(amount, 0) + " EUR";
  }

  static MoneyContent money() {
    return new MoneyContent(
        STUDY.bar(),
        STUDY.output(),
        STUDY.cost(),
        Optional.empty(),
        List.of(
            new MoneyLine("today", "0.71 EUR a piece", "twin-spindle turning centre, 38 s"),
            new MoneyLine("saving", whole(SAVING.perYear()), "in a year"),
            new MoneyLine("investment", whole(STUDY.investment()), "machine and options"),
            new MoneyLine("payback", PAYBACK.words(), "machine written off in 8 years"),
            new MoneyLine("break-even lot", "5 900 pieces", "against the turning centre")),
        Sensitivity.of(given(), 10));
  }

  static List<ToolRow> tools() {
    return STUDY.tools().uses().stream().map(SampleMoney::tool).toList();
  }

  private static ToolRow tool(ToolUse use) {
    return new ToolRow(
        use.wear().toolLabel(),
        "slide " + use.wear().operationId().charAt(0),
        use.wear().operationId(),
        2,
        use.wear().pricePerEdge().multiply(BigDecimal.valueOf(2)),
        use.changedEveryCount(),
        use.plan() == ToolUse.Plan.COMMON_STOP ? "common stop" : "own stop",
        use.edgesPer1000Count(),
        use.costPerPiece().multiply(BigDecimal.valueOf(1000)),
        Tone.PLAIN);
  }

  static List<EquipmentRow> equipment() {
    return List.of(
        new EquipmentRow(
            "4-cross", "driven tool", "40 cross drill Ø4", Optional.of(money("24000"))),
        new EquipmentRow(
            "4-cross", "held spindle", "40 cross drill Ø4", Optional.of(money("18000"))),
        new EquipmentRow(
            "machine", "pick-up spindle", "70 face and chamfer back", Optional.empty()));
  }

  static ComparisonTable alternatives() {
    return new ComparisonTable(
        List.of(
            "verdict",
            "cycle, s",
            "net output, pieces/h",
            "machines",
            "piece cost, EUR",
            "investment, EUR"),
        List.of(
            new ComparisonTable.Column(
                "Six spindles, 32 mm",
                List.of("look closer", "5.65", "513", "1", "0.553", "1 022 000"),
                Tone.MARKED),
            new ComparisonTable.Column(
                "Eight spindles, 42 mm",
                List.of("fits", "4.71", "581", "1", "0.571", "1 410 000"),
                Tone.PLAIN),
            new ComparisonTable.Column(
                "Twin-spindle turning centre",
                List.of("fits", "38.2", "88", "5", "0.710", "5 × 265 000"),
                Tone.PLAIN)));
  }

  private static ToolWear wear(
      String id, String tool, double cutS, double lifeMin, String edge, double changeMin) {
    return new ToolWear(id, tool, cutS, lifeMin, ToolWear.LifeLimit.WEAR, money(edge), changeMin);
  }

  private static BigDecimal money(String amount) {
    return new BigDecimal(amount);
  }
}
