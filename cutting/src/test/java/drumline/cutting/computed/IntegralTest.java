package drumline.cutting.computed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.drive.RunUpTime;
import drumline.cutting.drive.SpindleCurve;
import drumline.cutting.stiffness.BarSection;
import drumline.cutting.stiffness.BendingDeflection;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedArc;
import drumline.cutting.turning.SurfaceSpeedFacing;
import drumline.cutting.turning.SurfaceSpeedTaper;
import java.util.Random;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Closed forms against the numerical integrator of Hipparchus 4.0.1 (hipparchus-core,
 * SimpsonIntegrator), piece by piece between the kinks.
 */
class IntegralTest {
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void facingTimeIsTheIntegralOfItsSpeed(long seed) {
    Random random = new Random(seed);
    double outer = 5 + 30 * random.nextDouble();
    double inner = outer * random.nextDouble() * (random.nextBoolean() ? 1 : 0);
    double feed = 0.02 + 0.3 * random.nextDouble();
    double fastest = 1500 + 6000 * random.nextDouble();
    SurfaceSpeed speed =
        new SurfaceSpeed(
            40 + 300 * random.nextDouble(), fastest * random.nextDouble() / 2, fastest);
    double minutes = integral(r -> 1 / (feed * speed.revPerMin(r)), inner, outer, speed);
    assertThat(new SurfaceSpeedFacing(outer, inner, feed).timeS(speed))
        .as("seed %d", seed)
        .isCloseTo(60 * minutes, within(1e-7 * 60 * minutes));
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void taperTimeIsTheIntegralOfItsSpeed(long seed) {
    Random random = new Random(seed);
    double small = 4 + 10 * random.nextDouble();
    double large = small + 1 + 15 * random.nextDouble();
    double length = 30 * random.nextDouble();
    double feed = 0.05 + 0.2 * random.nextDouble();
    SurfaceSpeed speed = randomSpeed(random);
    SurfaceSpeedTaper taper = new SurfaceSpeedTaper(2 * large, 2 * small, length, feed);
    double slope = taper.slantMm() / (large - small);
    double minutes = integral(r -> slope / (feed * speed.revPerMin(r)), small, large, speed);
    assertThat(taper.timeS(speed))
        .as("seed %d", seed)
        .isCloseTo(60 * minutes, within(1e-7 * 60 * minutes));
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36})
  void arcTimeIsTheIntegralOfItsSpeed(long seed) {
    Random random = new Random(seed);
    double centre = 6 + 10 * random.nextDouble();
    double arc = 1 + 5 * random.nextDouble();
    double from = -90 + 80 * random.nextDouble();
    double to = from + 5 + (85 - from) * random.nextDouble();
    double feed = 0.05 + 0.2 * random.nextDouble();
    SurfaceSpeed speed = randomSpeed(random);
    UnivariateFunction perRadian =
        angle -> arc / (feed * speed.revPerMin(centre + arc * Math.sin(angle)));
    int pieces = 400;
    double start = Math.toRadians(from);
    double step = (Math.toRadians(to) - start) / pieces;
    double minutes = 0;
    for (int i = 0; i < pieces; i++) {
      minutes += simpson(perRadian, start + i * step, start + (i + 1) * step);
    }
    assertThat(new SurfaceSpeedArc(centre, arc, from, to, feed).timeS(speed))
        .as("seed %d", seed)
        .isCloseTo(60 * minutes, within(1e-5 * 60 * minutes));
  }

  @Test
  void bendingIsTheIntegralOfTheMoment() {
    double force = 300;
    double length = 60;
    BarSection section = new BarSection.Hexagon(17);
    double rigidity = 206_000 * section.inertiaMm4();
    double overhang = simpson(x -> force * (length - x) * (length - x) / rigidity, 0, length);
    assertThat(BendingDeflection.overhangMm(force, length, 206_000, section))
        .isCloseTo(overhang, within(1e-9));
    double prop = 5 * force / 16;
    double propped =
        simpson(
            x -> (force * (length / 2 - x) - prop * (length - x)) * (length / 2 - x) / rigidity,
            0,
            length / 2);
    assertThat(BendingDeflection.proppedMm(force, length, 206_000, section))
        .isCloseTo(propped, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void runUpTimeIsTheIntegralOfInertiaOverTorque(long seed) {
    Random random = new Random(seed);
    double base = 500 + 1500 * random.nextDouble();
    double drop = base * (1 + 2 * random.nextDouble());
    SpindleCurve curve = new SpindleCurve(5 + 20 * random.nextDouble(), base, drop, drop * 1.7);
    double to = curve.maxSpeedRevPerMin() * random.nextDouble();
    UnivariateFunction perTorque = n -> Math.PI / 30 / curve.torqueNm(n);
    double seconds = 0;
    double[] kinks = {0, Math.min(base, to), Math.min(drop, to), to};
    for (int k = 0; k + 1 < kinks.length; k++) {
      seconds += simpson(perTorque, kinks[k], kinks[k + 1]);
    }
    double inertiaKgM2 = 0.05;
    assertThat(RunUpTime.ofCurveS(curve, inertiaKgM2, 0, to))
        .as("seed %d", seed)
        .isCloseTo(inertiaKgM2 * seconds, within(1e-7 * inertiaKgM2 * seconds));
  }

  private static SurfaceSpeed randomSpeed(Random random) {
    double fastest = 2000 + 4000 * random.nextDouble();
    return new SurfaceSpeed(
        60 + 200 * random.nextDouble(), fastest * random.nextDouble() / 2, fastest);
  }

  private static double integral(
      UnivariateFunction function, double from, double to, SurfaceSpeed speed) {
    double clamp = speed.clampRadiusMm();
    double lowest = clamp * speed.maxSpeedRevPerMin() / speed.minSpeedRevPerMin();
    double a = Math.min(to, Math.max(from, clamp));
    double b = Math.min(to, Math.max(from, lowest));
    return simpson(function, from, a) + simpson(function, a, b) + simpson(function, b, to);
  }

  private static double simpson(UnivariateFunction function, double from, double to) {
    if (to <= from) {
      return 0;
    }
    return new SimpsonIntegrator(1e-10, 1e-14, 3, 60).integrate(1_000_000, function, from, to);
  }
}
