package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.drilling.DrillPass;
import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.cutting.drilling.HoleCut;
import drumline.cutting.drilling.PeckCycle;
import drumline.cutting.drive.SpindleCurve;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.livetool.CrossHole;
import drumline.cutting.livetool.PolarFlat;
import drumline.cutting.parting.CutOff;
import drumline.cutting.parting.GroovePlunge;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedFacing;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits, inverses and special cases that must hold whatever the numbers. */
class ClosedFormTest {
  private static final KienzleConstants STEEL = new KienzleConstants(1700, 0.19);
  private static final double EXACT = 1e-9;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void feedForAForceGivesThatForce(long seed) {
    Random random = new Random(seed);
    double depth = 0.2 + 4 * random.nextDouble();
    double angle = 30 + 60 * random.nextDouble();
    double force = 200 + 3000 * random.nextDouble();
    KienzleCorrections corrections = new KienzleCorrections(0.95, 1.05, 1.3, 1.2);
    double feed = KienzleForce.feedMmPerRev(STEEL, corrections, depth, angle, force);
    assertThat(KienzleForce.forceN(STEEL, corrections, new ChipSection(depth, feed, angle)))
        .as("seed %d", seed)
        .isCloseTo(force, within(EXACT * force));
  }

  @Test
  void withoutClampFacingTakesAsLongAsTheMeanDiameterSays() {
    SurfaceSpeed speed = SurfaceSpeed.clampedAt(150, 1e9);
    SurfaceSpeedFacing facing = new SurfaceSpeedFacing(16, 10, 0.1);
    double mean = 1000 * 150 / (Math.PI * 26);
    assertThat(facing.timeS(speed)).isCloseTo(60 * 6 / (0.1 * mean), within(1e-6));
    assertThat(facing.equalTimeRevPerMin(speed)).isCloseTo(mean, within(1e-3));
  }

  @Test
  void aLowestSpeedShortensTheTime() {
    SurfaceSpeedFacing facing = new SurfaceSpeedFacing(40, 0, 0.1);
    double free = facing.timeS(SurfaceSpeed.clampedAt(60, 4000));
    double held = facing.timeS(new SurfaceSpeed(60, 400, 4000));
    assertThat(held).isLessThan(free);
    assertThat(facing.timeS(new SurfaceSpeed(60, 4000, 4000)))
        .isCloseTo(60 * 40 / (0.1 * 4000), within(EXACT));
  }

  @Test
  void cutOffWithEqualFeedsIsOneFacing() {
    CutOff whole = new CutOff(20, 0, 0, 0, 0.08, 0.08, 3);
    SurfaceSpeed speed = SurfaceSpeed.clampedAt(120, 5000);
    assertThat(whole.timeS(speed))
        .isCloseTo(new SurfaceSpeedFacing(10, 0, 0.08).timeS(speed), within(EXACT));
    assertThat(whole.revolutionsCount()).isCloseTo(125, within(EXACT));
    CutOff eased = new CutOff(20, 0, 0.5, 0.3, 0.08, 0.04, 3);
    assertThat(eased.revolutionsCount()).isCloseTo(9 / 0.08 + 1.8 / 0.04, within(EXACT));
  }

  @Test
  void aTubeEndsAtItsBore() {
    CutOff tube = new CutOff(20, 12, 0.5, 0.3, 0.08, 0.04, 3);
    assertThat(tube.revolutionsCount()).isCloseTo(4.5 / 0.08 + 0.3 / 0.04, within(EXACT));
    assertThat(tube.timeS(1000)).isCloseTo(60 * tube.revolutionsCount() / 1000, within(EXACT));
  }

  @Test
  void grooveAtOneSpeedAgreesWithFixedClamps() {
    GroovePlunge groove = new GroovePlunge(20, 3, 0.5, 0.05, 2);
    assertThat(groove.timeS(new SurfaceSpeed(100, 1500, 1500)))
        .isCloseTo(groove.timeS(1500), within(EXACT));
  }

  @Test
  void enlargingInTwoStepsTakesTheTorqueOfTheWholeHole() {
    HoleCut whole = new HoleCut(12, 0, 2, 59, 0.2, HoleCut.Thrust.CHISEL_POINT);
    HoleCut first = new HoleCut(8, 0, 2, 59, 0.2, HoleCut.Thrust.CHISEL_POINT);
    HoleCut second = new HoleCut(12, 8, 2, 59, 0.2, HoleCut.Thrust.CHISEL_POINT);
    double sum = torque(first) + torque(second);
    assertThat(sum).isCloseTo(torque(whole), within(EXACT));
    assertThat(whole.load(STEEL, KienzleCorrections.NONE, 1000).validity().isInside()).isTrue();
  }

  @Test
  void aThinChipIsReportedAndStillComputed() {
    HoleCut thin = HoleCut.drill(3, 118, 0.04);
    assertThat(thin.load(STEEL, KienzleCorrections.NONE, 4000).validity().notes())
        .singleElement()
        .satisfies(
            note ->
                assertThat(note.toLine())
                    .isEqualTo(
                        "chip thickness 0.01714 mm is outside 0.03000 to 1.500 mm: the edge rubs"
                            + " and the force is higher than computed"));
  }

  @Test
  void oneStrokeNeedsNoWithdrawal() {
    PeckCycle plain = new PeckCycle(30, 30, 10, 1, 0.1, 12000, 0.2);
    assertThat(plain.withdrawalsMm()).isEmpty();
    assertThat(plain.timeS(2000)).isCloseTo(60 * 30 / (0.1 * 2000), within(EXACT));
    PeckCycle pecked = new PeckCycle(50, 20, 10, 1, 0.1, 12000, 0.2);
    assertThat(pecked.withdrawalsMm()).containsExactly(20.0, 30.0, 40.0);
    double extra = 120 * (20 + 30 + 40) / 12000.0 + 3 * (60 * 1 / (0.1 * 2000) + 0.2);
    assertThat(pecked.timeS(2000)).isCloseTo(60 * 50 / (0.1 * 2000) + extra, within(EXACT));
  }

  @Test
  void throughHoleCountsItsPoint() {
    DrillPass blind = DrillPass.solid(10, 118, 30, DepthTo.FULL_DIAMETER, 1, 0.2);
    assertThat(blind.travelMm()).isCloseTo(31 + 5 / Math.tan(Math.toRadians(59)), within(EXACT));
  }

  @Test
  void crossHoleInAWideBarIsAStraightHole() {
    CrossHole hole = new CrossHole(1000, 0.1, 118, 1, 0.5, 0.05, 0.3);
    assertThat(hole.entrySagMm()).isLessThan(1e-5);
    assertThat(hole.throughTravelMm()).isCloseTo(1001.5 + 0.1 * 0.3004, within(1e-3));
    assertThat(hole.intoBoreTravelMm(990)).isCloseTo(6.5 + 0.1 * 0.3004, within(1e-3));
  }

  @Test
  void polarFlatSlowsOnlyWhereTheAxisIsAtItsLimit() {
    PolarFlat flat = new PolarFlat(8.5, 10.5, 400);
    assertThat(flat.timeS(100)).isCloseTo(60 * 10.5 / 400, within(EXACT));
    double minutes = 0;
    int steps = 200_000;
    for (int i = 0; i < steps; i++) {
      double x = -5.25 + 10.5 * (i + 0.5) / steps;
      double wanted = 400 * 8.5 / (2 * Math.PI * (8.5 * 8.5 + x * x));
      minutes += 10.5 / steps / (400 * Math.min(1, 6 / wanted));
    }
    assertThat(flat.timeS(6)).isCloseTo(60 * minutes, within(1e-6));
  }

  @Test
  void spindleCurveIsContinuousAndRefusesMoreThanItsSpeed() {
    SpindleCurve curve = new SpindleCurve(11, 1500, 4500, 6000);
    for (double kink : new double[] {1500, 4500}) {
      assertThat(curve.torqueNm(kink * (1 - 1e-9)))
          .isCloseTo(curve.torqueNm(kink * (1 + 1e-9)), within(1e-6));
    }
    assertThat(curve.torqueNm(0)).isCloseTo(70.03, within(0.005));
    assertThat(curve.powerKw(6000)).isCloseTo(8.25, within(EXACT));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> curve.torqueNm(6001))
        .withMessage("speedRevPerMin is 6001; allowed is from 0 to 6000.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> curve.powerKw(Double.NaN))
        .withMessage("speedRevPerMin is NaN; allowed is from 0 to 6000.");
  }

  private static double torque(HoleCut cut) {
    return cut.load(STEEL, KienzleCorrections.NONE, 1000).torqueNm();
  }
}
