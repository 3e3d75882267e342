package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.sample.OperationSample;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.SpindleShares;
import drumline.cycle.spindle.WorkSpindle;
import drumline.shop.machine.Workholding;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpindleSharesTest {
  private static WorkSpindle spindle(double gripN, double jawMassKg, double safetyRatio) {
    Workholding grip = new Workholding(gripN, 0.15, jawMassKg, 20, safetyRatio);
    return new WorkSpindle(
        100, 6000, 10, 60, 12_000, 0.2, grip, 20, WorkSpindle.AxialHold.FRICTION);
  }

  private static Loads loads(double torqueNm, double thrustN) {
    return new Loads(0, thrustN, 0, torqueNm, 0, 0);
  }

  @Test
  void slipCheckOfADrill() {
    // [BASIS] example C2: 15 kN, μ 0.15, d 20 mm hold 22.5 Nm or 2250 N; 2.64 Nm with 1125 N pull
    // 1156 N, a safety of 1.95.
    assertThat(SpindleShares.gripShareRatio(loads(22.5, 0), spindle(15_000, 0, 1), 0))
        .isCloseTo(1, within(1e-12));
    assertThat(SpindleShares.pullN(loads(2.64, 1125), spindle(15_000, 0, 1)))
        .isCloseTo(1156, within(0.5));
    assertThat(1 / SpindleShares.gripShareRatio(loads(2.64, 1125), spindle(15_000, 0, 1), 0))
        .isCloseTo(1.95, within(0.005));
  }

  @Test
  void speedTakesFromTheGrip() {
    // 0.4 kg at 20 mm, 6000 rev/min: 0.4·0.02·(2π·100)² = 3158 N.
    assertThat(SpindleShares.gripAtN(spindle(20_000, 0.4, 2), 6000))
        .isCloseTo(20_000 - 3158.3, within(0.1));
    // The same loss is more than 0.67 of 4000 N.
    assertThat(SpindleShares.gripAtN(spindle(4000, 0.4, 2), 6000)).isZero();
    assertThat(SpindleShares.gripShareRatio(loads(1, 0), spindle(4000, 0.4, 2), 6000)).isInfinite();
  }

  @Test
  void powerLimitsTorqueAtHighSpeed() {
    // 10 kW at 6000 rev/min: 9549.3·10/6000 = 15.9 Nm; up to 1591 rev/min 60 Nm.
    WorkSpindle spindle = spindle(20_000, 0.4, 2);
    assertThat(SpindleShares.torqueAtNm(spindle, 6000)).isCloseTo(15.915, within(0.001));
    assertThat(SpindleShares.torqueAtNm(spindle, 1000)).isEqualTo(60);
    assertThat(SpindleShares.torqueAtNm(spindle, 0)).isEqualTo(60);
  }

  @ParameterizedTest
  @CsvSource({"0, 100, cutting speed", "30, 100, spindle's power", "12, 2000, collet's grip"})
  void sharesReachOneWhereTheWindowEnds(double torqueNm, double thrustN, String limit) {
    WorkSpindle spindle =
        limit.startsWith("collet") ? spindle(34_000, 2, 2) : spindle(60_000, 0.4, 2);
    Operation operation =
        OperationSample.withLoads(OperationSample.turning("t", 10), torqueNm, thrustN);
    SpeedWindow window = SpeedWindow.find(operation, spindle).orElseThrow();
    double n = window.highestRevPerMin();
    double share =
        Math.max(
            SpindleShares.torqueShareRatio(operation.loads(), spindle, n),
            SpindleShares.gripShareRatio(operation.loads(), spindle, n));
    assertThat(window.limit()).startsWith(limit);
    if (limit.equals("cutting speed")) {
      assertThat(n).isEqualTo(6000);
      assertThat(share).isLessThan(1);
    } else {
      assertThat(share).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void noSpeedIsLeftWhereTheGripNeverHolds() {
    Operation operation = OperationSample.withLoads(OperationSample.turning("t", 10), 50, 0);
    assertThat(SpeedWindow.find(operation, spindle(20_000, 0.4, 2))).isEmpty();
    Operation heavy = OperationSample.withLoads(operation, 61, 0);
    assertThat(SpeedWindow.find(heavy, spindle(1_000_000, 0.4, 2))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"3, 100, 5, 900", "0, 2000, 8, 0", "9, 10, 1, 1500"})
  void addingSharesIsOnTheSafeSide(double m1, double f1, double m2, double f2) {
    WorkSpindle spindle = spindle(20_000, 0.4, 2);
    double apart =
        SpindleShares.gripShareRatio(loads(m1, f1), spindle, 3000)
            + SpindleShares.gripShareRatio(loads(m2, f2), spindle, 3000);
    double together = SpindleShares.gripShareRatio(loads(m1 + m2, f1 + f2), spindle, 3000);
    assertThat(together).isLessThanOrEqualTo(apart + 1e-12);
  }
}
