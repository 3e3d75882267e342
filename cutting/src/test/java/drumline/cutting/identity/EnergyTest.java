package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.ChipCompression;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.SpecificEnergyPower;
import drumline.cutting.milling.MillingChip;
import drumline.cutting.milling.MillingCut;
import drumline.cutting.milling.MillingPass;
import drumline.cutting.parting.FaceGroove;
import drumline.cutting.parting.PlungeCut;
import drumline.cutting.slotting.BroachPull;
import drumline.cutting.slotting.SlottingCut;
import drumline.cutting.slotting.WobbleBroaching;
import drumline.cutting.threading.ChasingCut;
import drumline.cutting.turning.FormToolCut;
import drumline.cutting.turning.TurningCut;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Power by another way: whatever the tool, power is specific force times the volume of chips in a
 * second, and torque is power over angular speed.
 */
class EnergyTest {
  private static final KienzleConstants STEEL = new KienzleConstants(1700, 0.19);
  private static final KienzleCorrections MILLED =
      KienzleCorrections.NONE.withCompression(ChipCompression.MILLING);
  private static final double EXACT = 1e-9;

  @ParameterizedTest
  @CsvSource({"10,10,ONE_SIDE", "10,2,ONE_SIDE", "63,40,CENTRED", "63,63,CENTRED"})
  void millingPowerIsThatOfItsChips(double cutterMm, double widthMm, MillingChip.Place place) {
    MillingChip chip = new MillingChip(cutterMm, widthMm, 0.08, 90, place);
    CuttingLoad load = new MillingCut(chip, 3, 4, 0).load(STEEL, MILLED, 2500);
    double feedMmPerMin = new MillingPass(20, 0, 0, 0.08, 3).feedMmPerMin(2500);
    assertThat(load.powerKw())
        .isCloseTo(energyKw(load, 4 * widthMm * feedMmPerMin / 60), within(EXACT));
    assertThat(CuttingPower.ofTorqueKw(load.torqueNm(), 2500))
        .isCloseTo(load.powerKw(), within(EXACT));
  }

  @Test
  void drillingPowerIsThatOfItsChips() {
    HoleCut enlarging = new HoleCut(12, 7, 3, 59, 0.25, HoleCut.Thrust.CHISEL_POINT);
    CuttingLoad load = enlarging.load(STEEL, KienzleCorrections.NONE, 900);
    double removal = Math.PI / 4 * (144 - 49) * 0.25 * 900 / 60;
    assertThat(load.powerKw()).isCloseTo(energyKw(load, removal), within(EXACT));
  }

  @Test
  void turningAndPlungingPowerIsThatOfTheirChips() {
    double speed = 1800;
    double surface = SpindleSpeed.mPerMin(speed, 24);
    ChipSection chip = new ChipSection(2, 0.2, 75);
    CuttingLoad turned =
        new TurningCut(24, chip, ForceSplit.SQUARE_EDGE, TurningCut.Along.AXIS)
            .load(STEEL, KienzleCorrections.NONE, speed);
    assertThat(turned.powerKw())
        .isCloseTo(energyKw(turned, 2 * 0.2 * surface * 1000 / 60), within(EXACT));
    assertThat(turned.axialForceN()).isCloseTo(0.4 * turned.mainForceN(), within(EXACT));
    CuttingLoad faced =
        new TurningCut(24, chip, ForceSplit.SQUARE_EDGE, TurningCut.Along.RADIUS)
            .load(STEEL, KienzleCorrections.NONE, speed);
    assertThat(faced.radialForceN()).isEqualTo(turned.axialForceN());
    CuttingLoad parted =
        new PlungeCut(3, 24, 0.08, ForceSplit.STRAIGHT_IN)
            .load(STEEL, KienzleCorrections.NONE, speed);
    assertThat(parted.powerKw())
        .isCloseTo(energyKw(parted, 3 * 0.08 * surface * 1000 / 60), within(EXACT));
    CuttingLoad faceGroove =
        new FaceGroove(24, 3, 2, 0.5, 0.08, 1).load(STEEL, KienzleCorrections.NONE, speed);
    assertThat(faceGroove.powerKw()).isCloseTo(parted.powerKw(), within(EXACT));
    assertThat(faceGroove.axialForceN()).isEqualTo(parted.radialForceN());
  }

  @Test
  void aFormToolIsAWidePlungeAndReportsSlenderWork() {
    FormToolCut form = new FormToolCut(20, 18, 24, 6, 0.04, 0.65);
    CuttingLoad load = form.load(STEEL, KienzleCorrections.NONE, 1000);
    CuttingLoad plunge =
        new PlungeCut(20, 24, 0.04, ForceSplit.STRAIGHT_IN)
            .load(STEEL, KienzleCorrections.NONE, 1000);
    assertThat(load.mainForceN()).isCloseTo(plunge.mainForceN(), within(EXACT));
    assertThat(load.radialForceN()).isCloseTo(plunge.radialForceN(), within(EXACT));
    assertThat(load.validity().notes())
        .singleElement()
        .satisfies(n -> assertThat(n.quantity()).isEqualTo("form width to smallest diameter"));
  }

  @Test
  void chasingPowerIsThatOfItsChips() {
    ChasingCut point = new ChasingCut(60, 0.2, 10, 0.4);
    CuttingLoad load = point.load(STEEL, KienzleCorrections.NONE, 0.5, 0.6, 1000);
    double surface = SpindleSpeed.mPerMin(1000, 10);
    double trapezium = 0.1 * (0.2 + (2 * 0.5 + 2 * 0.6) * Math.tan(Math.PI / 6) / 2);
    assertThat(point.areaMm2(0.5, 0.6)).isCloseTo(trapezium, within(EXACT));
    assertThat(load.powerKw())
        .isCloseTo(energyKw(load, trapezium * surface * 1000 / 60), within(EXACT));
  }

  @Test
  void strokesPushAlongTheAxis() {
    CuttingLoad slot = new SlottingCut(5, 0.05, 8, 0.3).load(STEEL, KienzleCorrections.NONE, 8);
    assertThat(slot.axialForceN()).isEqualTo(slot.mainForceN());
    assertThat(slot.powerKw()).isCloseTo(energyKw(slot, 5 * 0.05 * 8 * 1000 / 60), within(EXACT));
    assertThat(slot.torqueNm()).isCloseTo(slot.mainForceN() * 8 / 1000, within(EXACT));
    WobbleBroaching hexagon = new WobbleBroaching(6, 0.5, 10, 0.05);
    assertThat(hexagon.load(STEEL, KienzleCorrections.NONE).axialForceN())
        .isCloseTo(2 * slot.axialForceN(), within(1e-6));
    assertThat(hexagon.timeS(1000)).isCloseTo(60 * 6.5 / 50, within(EXACT));
    assertThat(BroachPull.teethCount(20, 8)).isEqualTo(3);
    assertThat(BroachPull.peakN(7441, 3)).isEqualTo(22_323);
    assertThat(BroachPull.strokeS(700, 11)).isCloseTo(3.818, within(0.001));
  }

  private static double energyKw(CuttingLoad load, double removalMm3PerS) {
    return SpecificEnergyPower.powerKw(load.specificForceMpa() / 1000, removalMm3PerS);
  }
}
