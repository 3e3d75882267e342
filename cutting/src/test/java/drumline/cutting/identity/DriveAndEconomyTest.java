package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.clamping.CentrifugalForce;
import drumline.cutting.clamping.ColletForce;
import drumline.cutting.clamping.RequiredGrip;
import drumline.cutting.clamping.SlipSafety;
import drumline.cutting.clamping.TurningGrip;
import drumline.cutting.drive.LiveToolCurve;
import drumline.cutting.drive.ShortTimeOverload;
import drumline.cutting.drive.ShortTimeOverload.Stretch;
import drumline.cutting.drive.SpindleCurve;
import drumline.cutting.life.CommonSpeedEconomy;
import drumline.cutting.life.CommonSpeedEconomy.SharedTool;
import drumline.cutting.life.EconomicToolLife;
import drumline.cutting.life.ExtendedToolLife;
import drumline.cutting.life.PiecesPerEdge;
import drumline.cutting.life.SlackToolLife;
import drumline.cutting.life.TaylorToolLife;
import drumline.cutting.life.ToolChangeLoss;
import drumline.cutting.stiffness.BalanceGrade;
import drumline.cutting.stiffness.BarSection;
import drumline.cutting.stiffness.BarWhirl;
import drumline.cutting.turning.AcceleratedFacing;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedFacing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drives, grip and economy: limits, inverses and slow exact twins. */
class DriveAndEconomyTest {
  private static final double EXACT = 1e-9;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void laggingSpindleAgreesWithItsStepByStepTwin(long seed) {
    Random random = new Random(seed);
    double outer = 6 + 20 * random.nextDouble();
    double inner = random.nextBoolean() ? 0 : outer * 0.3 * random.nextDouble();
    double feed = 0.04 + 0.1 * random.nextDouble();
    double fastest = 3000 + 4000 * random.nextDouble();
    double slowest = random.nextBoolean() ? 0 : fastest * 0.3 * random.nextDouble();
    SurfaceSpeed speed = new SurfaceSpeed(80 + 150 * random.nextDouble(), slowest, fastest);
    double acceleration = 300 + 3000 * random.nextDouble();
    AcceleratedFacing facing =
        new AcceleratedFacing(new SurfaceSpeedFacing(outer, inner, feed), acceleration);
    double twin = steppedS(outer, inner, feed, speed, acceleration);
    assertThat(facing.timeS(speed)).as("seed %d", seed).isCloseTo(twin, within(2e-3 * twin));
    assertThat(facing.timeS(speed))
        .isGreaterThanOrEqualTo(facing.facing().timeS(speed) * (1 - EXACT));
  }

  private static double steppedS(
      double outer, double inner, double feed, SurfaceSpeed speed, double acceleration) {
    double step = 1e-4;
    double radius = outer;
    double n = speed.revPerMin(outer);
    double time = 0;
    while (radius > inner) {
      radius -= feed * n / 60 * step;
      double wanted = speed.revPerMin(Math.max(radius, 0));
      n = Math.min(wanted, n + acceleration * step);
      time += step;
    }
    return time;
  }

  @Test
  void aStrongDriveFollows() {
    SurfaceSpeedFacing facing = new SurfaceSpeedFacing(16, 0, 0.08);
    SurfaceSpeed speed = SurfaceSpeed.clampedAt(150, 4000);
    assertThat(new AcceleratedFacing(facing, 1e7).timeS(speed))
        .isCloseTo(facing.timeS(speed), within(EXACT));
    assertThat(new AcceleratedFacing(facing, 500).wantedRevPerMinPerS(speed, 8))
        .isCloseTo(60 * 0.08 * Math.pow(2984.155 / 60, 2) / 8, within(0.01));
  }

  @Test
  void commonSpeedOfOneToolIsItsOwnEconomicLife() {
    SharedTool tool = new SharedTool(0.25, 12, 60, 4, BigDecimal.valueOf(5));
    CommonSpeedEconomy economy = new CommonSpeedEconomy(List.of(tool), 12);
    double cheapest = economy.cheapestRatio(BigDecimal.valueOf(60));
    double life = 60 * Math.pow(cheapest, -4);
    double own =
        new EconomicToolLife(0.25, 4).cheapestMin(BigDecimal.valueOf(5), BigDecimal.valueOf(60));
    assertThat(own).isCloseTo(27, within(EXACT));
    assertThat(life).isCloseTo(own, within(1e-6));
    assertThat(60 * Math.pow(economy.fastestRatio(), -4)).isCloseTo(12, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void noNeighbouringCommonSpeedIsFaster(long seed) {
    Random random = new Random(seed);
    List<SharedTool> tools = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      tools.add(
          new SharedTool(
              0.12 + 0.3 * random.nextDouble(),
              1 + 5 * random.nextDouble(),
              30 + 200 * random.nextDouble(),
              1 + 8 * random.nextDouble(),
              BigDecimal.ONE));
    }
    CommonSpeedEconomy economy = new CommonSpeedEconomy(tools, 6);
    double best = economy.fastestRatio();
    double time = economy.perPieceS(best);
    for (double other : new double[] {0.7, 0.9, 0.99, 1.01, 1.1, 1.4}) {
      assertThat(economy.perPieceS(best * other)).as("seed %d", seed).isGreaterThan(time);
    }
    assertThat(economy.cheapestRatio(BigDecimal.valueOf(60))).isLessThan(best);
  }

  @Test
  void extendedLifeKeepsItsKnownPointAndItsSlopes() {
    ExtendedToolLife life = new ExtendedToolLife(4, 2, 0.7, 180, 0.2, 2, 15);
    assertThat(life.lifeMin(180, 0.2, 2)).isCloseTo(15, within(EXACT));
    assertThat(life.lifeMin(90, 0.2, 2)).isCloseTo(15 * 16, within(EXACT));
    assertThat(life.lifeMin(180, 0.1, 2)).isCloseTo(15 * 4, within(EXACT));
    TaylorToolLife plain = life.at(0.1, 1);
    assertThat(plain.lifeMin(150)).isCloseTo(life.lifeMin(150, 0.1, 1), within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ExtendedToolLife(2, 3, 0.7, 180, 0.2, 2, 15))
        .withMessage("feedPowerRatio is 3; allowed is above 0 and below 2.");
  }

  @Test
  void slackGivesLifeByTaylor() {
    SlackToolLife slack = new SlackToolLife(0.25, 3, 6);
    assertThat(slack.lifeRatio()).isCloseTo(16, within(EXACT));
    assertThat(slack.piecesRatio()).isCloseTo(8, within(EXACT));
    assertThat(PiecesPerEdge.wholeCount(15, 4.4)).isEqualTo(204);
  }

  @Test
  void groupedChangesWaitForTheShortestLife() {
    List<ToolChangeLoss> two = List.of(new ToolChangeLoss(6, 10, 3), new ToolChangeLoss(6, 20, 5));
    assertThat(ToolChangeLoss.groupedS(two, ToolChangeLoss.Crew.ALL_AT_ONCE, 1))
        .isCloseTo(60 * 6 / 100.0, within(EXACT));
    assertThat(ToolChangeLoss.groupedS(two, ToolChangeLoss.Crew.ONE_AFTER_THE_OTHER, 0))
        .isCloseTo(60 * 8 / 100.0, within(EXACT));
    assertThat(ToolChangeLoss.separateS(two)).isCloseTo(1.8 + 1.5, within(EXACT));
  }

  @Test
  void overloadOfACycleIsItsEquivalentTorque() {
    assertThat(ShortTimeOverload.equivalentNm(List.of(new Stretch(20, 10)), 10))
        .isCloseTo(20, within(EXACT));
    double quarter = ShortTimeOverload.equivalentNm(List.of(new Stretch(20, 2.5)), 10);
    assertThat(quarter).isCloseTo(10, within(EXACT));
    assertThat(ShortTimeOverload.allowedRatio(0.25, 3)).isCloseTo(2, within(EXACT));
    assertThat(ShortTimeOverload.allowedRatio(0.04, 3)).isEqualTo(3);
  }

  @Test
  void gearingTradesSpeedForTorque() {
    SpindleCurve motor = SpindleCurve.withoutDrop(3, 3000, 6000);
    LiveToolCurve fast = new LiveToolCurve(motor, 2, 0.9, 10_000, 50);
    assertThat(fast.maxRevPerMin()).isEqualTo(10_000);
    assertThat(fast.torqueNm(6000)).isCloseTo(0.9 * motor.torqueNm(3000) / 2, within(EXACT));
    assertThat(fast.powerKw(8000)).isCloseTo(0.9 * 3, within(EXACT));
    assertThat(new LiveToolCurve(motor, 0.1, 0.9, 600, 50).torqueNm(100)).isEqualTo(50);
  }

  @Test
  void gripFallsWithSpeedUntilTheJawsLift() {
    TurningGrip grip = new TurningGrip(30_000, 3, 40, TurningGrip.Side.OUTSIDE);
    double limit = grip.en1550RevPerMin();
    assertThat(CentrifugalForce.forceN(3, 40, limit)).isCloseTo(20_100, within(1e-6));
    assertThat(grip.gripN(limit)).isCloseTo(9_900, within(1e-6));
    assertThat(grip.validity(limit * 0.999).isInside()).isTrue();
    assertThat(grip.validity(limit * 1.001).isInside()).isFalse();
    assertThat(grip.gripN(grip.referenceRevPerMin(12_000))).isCloseTo(12_000, within(1e-6));
    assertThat(grip.gripN(10_000)).isZero();
    assertThat(new TurningGrip(30_000, 3, 40, TurningGrip.Side.INSIDE).gripN(1000))
        .isGreaterThan(30_000);
  }

  @Test
  void requiredGripGivesItsSafetyBack() {
    SlipSafety.Demand demand = new SlipSafety.Demand(2.64, 1125);
    double needed = new SlipSafety(15_000, 0.15, 20).requiredGripN(demand, 2);
    assertThat(new SlipSafety(needed, 0.15, 20).safetyRatio(demand)).isCloseTo(2, within(EXACT));
    assertThat(needed).isCloseTo(15_408, within(1.0));
    assertThat(new SlipSafety(0, 0.15, 20).safetyRatio(demand)).isZero();
    RequiredGrip required = new RequiredGrip(8000, 2, 1.5);
    assertThat(required.standingN(5000, TurningGrip.Side.OUTSIDE)).isCloseTo(31_500, within(EXACT));
    assertThat(required.standingN(5000, TurningGrip.Side.INSIDE)).isCloseTo(16_500, within(EXACT));
    assertThat(ColletForce.radialN(1000, 45, 0)).isCloseTo(1000, within(EXACT));
  }

  @Test
  void criticalSpanAndSpeedAreInverse() {
    BarWhirl tube = BarWhirl.steel(new BarSection.Tube(32, 20));
    double span = tube.longestSpanMm(1500);
    assertThat(tube.criticalRevPerMin(span)).isCloseTo(1500, within(1e-6));
    double ratio =
        tube.criticalRevPerMin(1000)
            / BarWhirl.steel(new BarSection.Round(32)).criticalRevPerMin(1000);
    assertThat(ratio).isCloseTo(Math.hypot(32, 20) / 32, within(EXACT));
    assertThat(BalanceGrade.gradeMmPerS(BalanceGrade.allowedUm(6.3, 4000), 4000))
        .isCloseTo(6.3, within(EXACT));
    assertThat(BalanceGrade.allowedUm(6.3, 3000)).isCloseTo(20.05, within(0.005));
  }
}
