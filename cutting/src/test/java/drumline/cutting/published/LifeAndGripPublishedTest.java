package drumline.cutting.published;

import drumline.cutting.clamping.SlipSafety;
import drumline.cutting.finish.FeedMarkRoughness;
import drumline.cutting.finish.KnurlTracking;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.life.TaylorToolLife;
import drumline.cutting.stiffness.BarSection;
import drumline.cutting.stiffness.BarWhirl;
import java.util.stream.Stream;
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
      default -> throw c.unknown();
    };
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
