package drumline.cutting.published;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.force.LeeShafferForce;
import drumline.cutting.force.SpecificEnergyPower;
import drumline.cutting.force.SpeedCorrection;
import drumline.cutting.turning.TurningCut;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of cutting force and power from published/force.csv. */
class ForcePublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("force.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "turningPowerKw" -> turning(c).powerKw();
      case "turningKc" -> turning(c).specificForceMpa();
      case "turningForceN" -> turning(c).mainForceN();
      case "rpm" -> SpindleSpeed.revPerMin(c.get("vc"), c.get("d"));
      case "surfaceSpeed" -> SpindleSpeed.mPerMin(c.get("n"), c.get("d"));
      case "thickness" -> chip(c).thicknessMm();
      case "kc" ->
          new KienzleConstants(c.get("kc11"), c.get("mc"))
              .specificForceMpa(new ChipSection(1, c.get("f"), c.get("kappa")).thicknessMm());
      case "ringRemoval" -> ring(c);
      case "energyPowerKw" -> SpecificEnergyPower.powerKw(c.get("u"), ring(c));
      case "energyForceN" ->
          60000
              * SpecificEnergyPower.powerKw(c.get("u"), ring(c))
              / SpindleSpeed.mPerMin(c.get("n"), c.get("d1"));
      case "feedForForce" ->
          KienzleForce.feedMmPerRev(
              new KienzleConstants(c.get("kc11"), c.get("mc")),
              KienzleCorrections.NONE,
              c.get("ap"),
              c.get("kappa"),
              c.get("F"));
      case "removal" ->
          new TurningCut(
                  100,
                  new ChipSection(c.get("ap"), c.get("f"), 90),
                  ForceSplit.SQUARE_EDGE,
                  TurningCut.Along.AXIS)
              .removalCm3PerMin(SpindleSpeed.revPerMin(c.get("vc"), 100));
      case "speedFactor" -> SpeedCorrection.ratio(c.get("vc"));
      case "shearAngle" -> shear(c).shearAngleDeg();
      case "shearForceN" -> shear(c).forceN(c.get("w"), c.get("c"));
      case "shearForceKn3" -> 3 * shear(c).forceN(c.get("w"), c.get("c")) / 1000;
      default -> throw c.unknown();
    };
  }

  private static ChipSection chip(PublishedCase c) {
    return new ChipSection(c.get("ap"), c.get("f"), c.get("kappa"));
  }

  private static CuttingLoad turning(PublishedCase c) {
    TurningCut cut =
        new TurningCut(c.get("d"), chip(c), ForceSplit.SQUARE_EDGE, TurningCut.Along.AXIS);
    return cut.load(
        new KienzleConstants(c.get("kc11"), c.get("mc")),
        KienzleCorrections.NONE,
        SpindleSpeed.revPerMin(c.get("vc"), c.get("d")));
  }

  private static double ring(PublishedCase c) {
    return SpecificEnergyPower.turningRemovalMm3PerS(
        c.get("d1"), c.get("d2"), c.get("f"), c.get("n"));
  }

  private static LeeShafferForce shear(PublishedCase c) {
    return new LeeShafferForce(c.get("tau"), c.get("mu"), c.get("gamma"));
  }
}
