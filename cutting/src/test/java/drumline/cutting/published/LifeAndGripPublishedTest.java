package drumline.cutting.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.clamping.SlipSafety;
import drumline.cutting.finish.FeedMarkRoughness;
import drumline.cutting.finish.KnurlTracking;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.life.EconomicToolLife;
import drumline.cutting.life.SpeedCost;
import drumline.cutting.life.TaylorToolLife;
import drumline.cutting.life.ToolChangeLoss;
import drumline.cutting.stiffness.BarSection;
import drumline.cutting.stiffness.BarWhirl;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of life, surface, stiffness and grip from published/life-and-grip.csv. */
class LifeAndGripPublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("life-and-grip.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  @Test
  void tenToolsOfTheWorkedLayoutLoseWhatItSays() throws IOException {
    String text;
    try (InputStream in = getClass().getResourceAsStream("/published/change-loss-y1.csv")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    List<ToolChangeLoss> tools =
        text.lines()
            .skip(2)
            .map(line -> line.split(",", 3))
            .map(
                cells ->
                    new ToolChangeLoss(
                        Double.parseDouble(cells[0]),
                        Double.parseDouble(cells[1]),
                        Double.parseDouble(cells[2])))
            .toList();
    assertThat(tools).hasSize(10);
    assertThat(ToolChangeLoss.separateS(tools)).isCloseTo(2.137, within(0.0005));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "fitN" -> fit(c).exponentRatio();
      case "fitC" -> fit(c).oneMinuteMPerMin();
      case "speedForLife" -> new TaylorToolLife(c.get("n"), c.get("C")).speedMPerMin(c.get("T"));
      case "rt" -> FeedMarkRoughness.ideal(c.get("r")).rtUm(c.get("f"));
      case "ra" -> FeedMarkRoughness.ideal(c.get("r")).raUm(c.get("f"));
      case "feedForRt" -> FeedMarkRoughness.ideal(c.get("r")).feedForRtMmPerRev(c.get("Rt"));
      case "feedForRa" -> FeedMarkRoughness.ideal(c.get("r")).feedMmPerRev(c.get("Ra"));
      case "knurlTeeth" -> knurl(c).teethCount(c.get("D"));
      case "knurlBlank" -> knurl(c).blankDiameterMm(c.count("zb"));
      case "knurlBlankIn" -> knurl(c).blankDiameterMm(c.count("zb")) / 25.4;
      case "whirl" ->
          BarWhirl.steel(new BarSection.Round(c.get("D"))).criticalRevPerMin(c.get("L"));
      case "torqueCapacity" -> grip(c).torqueCapacityNm();
      case "thrustCapacity" -> grip(c).thrustCapacityN();
      case "resultant" -> grip(c).resultantN(demand(c));
      case "slipSafety" -> grip(c).safetyRatio(demand(c));
      case "drivePower" ->
          CuttingPower.motorKw(CuttingPower.powerKw(c.get("F"), c.get("vc")), c.get("eta"))
              / c.get("P");
      case "hexCorners" -> new BarSection.Hexagon(c.get("s")).acrossCornersMm();
      case "squareCorners" -> new BarSection.Square(c.get("s")).acrossCornersMm();
      case "cheapestLife" -> cheapestMin(c);
      case "cheapestSpeed" ->
          new TaylorToolLife(c.get("n"), c.get("C")).speedMPerMin(cheapestMin(c));
      case "fastestLife" -> new EconomicToolLife(c.get("n"), c.get("tc")).fastestMin();
      case "fastestSpeed" ->
          new TaylorToolLife(c.get("n"), c.get("C"))
              .speedMPerMin(new EconomicToolLife(c.get("n"), c.get("tc")).fastestMin());
      case "pieceCost" -> cost(c).perPiece(cost(c).cheapestMPerMin()).doubleValue();
      case "changeLoss" -> new ToolChangeLoss(c.get("t"), c.get("T"), c.get("tc")).perPieceS();
      default -> throw c.unknown();
    };
  }

  private static double cheapestMin(PublishedCase c) {
    return new EconomicToolLife(c.get("n"), c.get("tc")).cheapestMin(money(c, "y"), perHour(c));
  }

  private static SpeedCost cost(PublishedCase c) {
    return new SpeedCost(
        new TaylorToolLife(c.get("n"), c.get("C")),
        c.get("tc"),
        c.get("idle"),
        SpeedCost.turningWayMm(c.get("d"), c.get("l"), c.get("f")),
        money(c, "fixed"),
        money(c, "y"),
        perHour(c));
  }

  private static BigDecimal money(PublishedCase c, String name) {
    return BigDecimal.valueOf(c.get(name));
  }

  private static BigDecimal perHour(PublishedCase c) {
    return money(c, "x").multiply(BigDecimal.valueOf(60));
  }

  private static TaylorToolLife fit(PublishedCase c) {
    return TaylorToolLife.through(c.get("V1"), c.get("T1"), c.get("V2"), c.get("T2"));
  }

  private static KnurlTracking knurl(PublishedCase c) {
    return new KnurlTracking(c.count("z"), c.get("Dk"), c.get("c"));
  }

  private static SlipSafety grip(PublishedCase c) {
    return new SlipSafety(c.get("F"), c.get("mu"), c.get("d"));
  }

  private static SlipSafety.Demand demand(PublishedCase c) {
    return new SlipSafety.Demand(c.get("M"), c.get("Fa"));
  }
}
