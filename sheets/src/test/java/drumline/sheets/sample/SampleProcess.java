package drumline.sheets.sample;

import drumline.sheets.content.plain.Tone;
import drumline.sheets.content.process.OperationRow;
import drumline.sheets.content.process.OrderRow;
import drumline.sheets.content.process.PositionSheet;
import drumline.sheets.content.process.SafetyFigure;
import drumline.sheets.content.process.SafetyKind;
import drumline.shop.operation.SpindleCondition;
import java.util.List;
import java.util.OptionalDouble;

/** Operations of the invented study. */
final class SampleProcess {
  private SampleProcess() {}

  static String summary() {
    return "Fits six positions at 5.65 s a piece, within 1.3 % of the least cycle that any layout"
        + " could reach. The driven cross drill in position 4 is an option of the machine.";
  }

  static List<PositionSheet> positions() {
    return List.of(
        position(
            "Position 1",
            4.41,
            0.64,
            Tone.PLAIN,
            op(
                "10",
                "rough turn Ø18.4 × 25",
                "turning insert, rough",
                "1-cross",
                2400,
                181,
                0.22,
                3.1,
                1420,
                20.4,
                5.1,
                9300,
                "Stock above 4 mm across: rough before finish"),
            op(
                "15",
                "spot Ø10",
                "spotting drill 10 mm",
                "1-end",
                2400,
                75,
                0.12,
                0.9,
                610,
                1.6,
                0.4,
                31200,
                "A drill must start true")),
        position(
            "Position 2",
            4.60,
            0.45,
            Tone.PLAIN,
            op(
                "20",
                "drill Ø8.8 × 21",
                "carbide drill 8.8 mm",
                "2-end",
                3600,
                100,
                0.16,
                2.6,
                1180,
                4.9,
                1.8,
                8800,
                "Half of the depth: divided between two positions"),
            op(
                "25",
                "groove Ø14 × 2.2",
                "grooving blade 2.2 mm",
                "2-cross",
                3600,
                158,
                0.06,
                1.4,
                540,
                3.8,
                1.4,
                12400,
                "Undercut behind the thread")),
        position(
            "Position 3",
            5.05,
            0,
            Tone.MARKED,
            op(
                "30",
                "drill Ø8.8 × 42",
                "carbide drill 8.8 mm",
                "3-end",
                3600,
                100,
                0.16,
                4.65,
                1180,
                4.9,
                1.8,
                5900,
                "Rest of the depth: rules chip removal"),
            op(
                "35",
                "finish turn Ø18 h9",
                "turning insert, finish",
                "3-cross",
                3600,
                204,
                0.12,
                3.2,
                210,
                1.9,
                0.7,
                10100,
                "Grade 9: finish after rough")),
        position(
            "Position 4",
            3.92,
            1.13,
            Tone.PLAIN,
            new OperationRow(
                "40",
                "cross drill Ø4 through",
                "carbide drill 4 mm, driven",
                "4-cross",
                SpindleCondition.HELD,
                0,
                OptionalDouble.of(7000),
                88,
                0.06,
                2.8,
                310,
                0.42,
                0.31,
                7400,
                "Cross hole after turning, before the bore is finished: burrs",
                Tone.PLAIN)),
        position(
            "Position 5",
            4.38,
            0.67,
            Tone.PLAIN,
            op(
                "50",
                "ream Ø9 H8",
                "reamer 9 mm",
                "5-end",
                1400,
                40,
                0.35,
                3.6,
                160,
                0.7,
                0.1,
                14800,
                "Grade 8 in a bore: ream after drilling"),
            op(
                "55",
                "roll thread M18 × 1",
                "rolling head",
                "5-cross",
                1400,
                79,
                0,
                1.1,
                0,
                22.0,
                3.2,
                57600,
                "Steel that forms: rolled thread")),
        position(
            "Position 6",
            4.22,
            0.83,
            Tone.PLAIN,
            op(
                "60",
                "cut off, kerf 2.5",
                "cut-off blade 2.5 mm",
                "6-cross",
                2100,
                211,
                0.08,
                3.3,
                590,
                9.4,
                2.1,
                6100,
                "Last on the drum")),
        position(
            "Pick-up spindle",
            3.60,
            2.05,
            Tone.PLAIN,
            op(
                "70",
                "face and chamfer back",
                "turning insert, finish",
                "back-1",
                3600,
                204,
                0.12,
                1.2,
                210,
                1.9,
                0.7,
                18800,
                "Burr of the cut-off")));
  }

  private static PositionSheet position(
      String title, double busyS, double slackS, Tone tone, OperationRow... rows) {
    String other = title.equals("Position 6") ? "feed bar to stop 0.80 s" : "";
    return new PositionSheet(title, busyS, slackS, other, List.of(rows), tone);
  }

  private static OperationRow op(
      String id,
      String title,
      String tool,
      String slide,
      double revPerMin,
      double speed,
      double feed,
      double timeS,
      double forceN,
      double torqueNm,
      double powerKw,
      long life,
      String reason) {
    return new OperationRow(
        id,
        title,
        tool,
        slide,
        SpindleCondition.TURNING,
        revPerMin,
        OptionalDouble.empty(),
        speed,
        feed,
        timeS,
        forceN,
        torqueNm,
        powerKw,
        life,
        reason,
        id.equals("30") ? Tone.MARKED : Tone.PLAIN);
  }

  static List<SafetyFigure> safety() {
    return List.of(
        new SafetyFigure(
            SafetyKind.CLAMPING,
            "Reserve of grip, position 1 at 2 400 rev/min",
            "1.9",
            "at least 2.0",
            Tone.MARKED),
        new SafetyFigure(
            SafetyKind.BAR_SPEED,
            "Bar Ø32, 3 m, fastest speed",
            "3 600 rev/min",
            "machine 6 000 rev/min",
            Tone.PLAIN),
        new SafetyFigure(
            SafetyKind.OIL_FIRE, "Cutting fluid", "straight oil", "local codes", Tone.PLAIN));
  }

  static List<OrderRow> orders() {
    return List.of(
        new OrderRow("15 spot Ø10", "20 drill Ø8.8 × 21", "Spot before drill"),
        new OrderRow("20 drill Ø8.8 × 21", "30 drill Ø8.8 × 42", "First part of the depth first"),
        new OrderRow("10 rough turn Ø18.4", "35 finish turn Ø18 h9", "Finish after rough"),
        new OrderRow(
            "40 cross drill Ø4", "50 ream Ø9 H8", "Burrs of the cross hole go with the reamer"),
        new OrderRow("25 groove Ø14 × 2.2", "55 roll thread M18 × 1", "Thread after groove"));
  }
}
