package drumline.cutting.computed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cutting.livetool.SaddleEdge;
import java.util.Random;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The edge of a cross hole against the Legendre-Gauss integrator of Hipparchus 4.0.1, over the
 * length of its curve in space.
 */
class SaddleIntegralTest {

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44, 45, 46})
  void edgeIsTheIntegralOfItsCurve(long seed) {
    Random random = new Random(seed);
    double work = 8 + 40 * random.nextDouble();
    double hole = work * (0.05 + 0.85 * random.nextDouble());
    double outer = work / 2;
    double radius = hole / 2;
    double quarter =
        new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-12)
            .integrate(
                1_000_000,
                angle -> {
                  double side = radius * Math.cos(angle);
                  double height = Math.sqrt(outer * outer - side * side);
                  double rise = radius * radius * Math.sin(angle) * Math.cos(angle) / height;
                  return Math.sqrt(radius * radius + rise * rise);
                },
                0,
                Math.PI / 2);
    assertThat(new SaddleEdge(work, hole).lengthMm())
        .as("seed %d", seed)
        .isCloseTo(4 * quarter, within(1e-8 * quarter));
  }

  /** A small hole in a large cylinder is as good as a hole in a plane. */
  @ParameterizedTest
  @CsvSource({"100, 1", "500, 5", "1000, 2"})
  void smallHoleHasTheEdgeOfAPlane(double work, double hole) {
    SaddleEdge edge = new SaddleEdge(work, hole);
    assertThat(edge.lengthMm()).isCloseTo(Math.PI * hole, within(1e-4 * hole));
    assertThat(edge.heightMm()).isCloseTo(hole * hole / (4 * work), within(1e-5));
  }
}
