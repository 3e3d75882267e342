package drumline.cutting.published;

import drumline.cutting.drilling.DrillPass;
import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.cutting.drilling.DrillPoint;
import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drilling.HoleSplit;
import drumline.cutting.drilling.PowerLawDrill;
import drumline.cutting.drilling.ShawOxfordTorque;
import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.SpecificEnergyPower;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of drilling from published/drilling.csv. */
class DrillingPublishedTest {
  static Stream<PublishedCase> cases() {
    return PublishedCase.read("drilling.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithItsSource(PublishedCase example) {
    example.check(answer(example));
  }

  private static double answer(PublishedCase c) {
    return switch (c.quantity()) {
      case "pointRatio" -> DrillPoint.lengthMm(1, c.get("sigma"));
      case "rpm" -> rpm(c);
      case "tipMin" ->
          new DrillPass(
                      c.get("d"),
                      0,
                      c.get("sigma"),
                      c.get("l") + c.get("lo"),
                      DepthTo.TIP,
                      c.get("la"),
                      0,
                      c.get("f"))
                  .timeS(rpm(c))
              / 60;
      case "fullMin" ->
          DrillPass.solid(
                      c.get("d"), c.get("sigma"), c.get("l"), DepthTo.FULL_DIAMETER, 0, c.get("f"))
                  .timeS(rpm(c))
              / 60;
      case "revs" ->
          DrillPass.solid(10, 118, c.get("l"), DepthTo.TIP, 0, c.get("f")).revolutionsCount();
      case "removal" -> removal(c, rpm(c));
      case "removalAt" -> removal(c, c.get("n"));
      case "energyPowerW" -> energyKw(c) * 1000;
      case "energyTorque" -> energyKw(c) * 30000 / Math.PI / c.get("n");
      case "thickness" -> drill(c).thicknessMm();
      case "kc" -> load(c, drill(c)).specificForceMpa();
      case "torque" -> load(c, drill(c)).torqueNm();
      case "powerKw" -> load(c, drill(c)).powerKw();
      case "thrust" -> load(c, drill(c)).axialForceN();
      case "thinThrust" -> load(c, thinned(c)).axialForceN();
      case "powerLawTorque" -> PowerLawDrill.STEEL.torqueNm(c.get("d"), c.get("f"));
      case "powerLawThrust" -> PowerLawDrill.STEEL.thrustN(c.get("d"), c.get("f"));
      case "shawTorque" -> ShawOxfordTorque.torqueNm(c.get("d"), c.get("f"), c.get("hb"));
      case "positions" -> HoleSplit.positionsCount(c.get("whole"), c.get("target"));
      default -> throw c.unknown();
    };
  }

  private static double rpm(PublishedCase c) {
    return SpindleSpeed.revPerMin(c.get("v"), c.get("d"));
  }

  private static double removal(PublishedCase c, double revPerMin) {
    return DrillPass.solid(c.get("d"), 118, 10, DepthTo.TIP, 0, c.get("f"))
        .removalMm3PerS(revPerMin);
  }

  private static double energyKw(PublishedCase c) {
    return SpecificEnergyPower.powerKw(c.get("u"), removal(c, c.get("n")));
  }

  private static HoleCut drill(PublishedCase c) {
    return HoleCut.drill(c.get("d"), c.get("sigma"), c.get("f"));
  }

  private static HoleCut thinned(PublishedCase c) {
    return new HoleCut(
        c.get("d"), 0, 2, c.get("sigma") / 2, c.get("f"), HoleCut.Thrust.THINNED_POINT);
  }

  private static CuttingLoad load(PublishedCase c, HoleCut cut) {
    return cut.load(
        new KienzleConstants(c.get("kc11"), c.get("mc")), KienzleCorrections.NONE, rpm(c));
  }
}
