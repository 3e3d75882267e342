package drumline.shape.computed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.identity.RandomPieces;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.part.Part;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Workpieces against the JDK's own areas ({@code java.awt.geom.Area}, JDK 17): the same cuts taken
 * from the same bar by another library, volumes summed from the frusta of cones under its outline.
 */
class JdkAreaTest {

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void volumeIsThatOfAnotherLibrary(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    List<Operation> cuts = pieces.cuts(part);
    WorkpieceStates states =
        WorkpieceStates.of(
            Prints.round(RandomPieces.BAR_MM), part, List.of(new PositionWork(1, cuts)));
    Area left = new Area();
    states.bar().outlines().forEach(outline -> left.add(area(outline)));
    for (Operation cut : cuts) {
      for (CutRegion region : cut.removes()) {
        left.subtract(area(region.outline()));
      }
    }
    Area piece = area(box(-50, part.lengthMm() + 1e-6, 0, 100));
    left.intersect(piece);
    assertThat(states.last().volumeMm3()).isCloseTo(frustaMm3(left), within(0.05));
  }

  private static List<PointZr> box(double fromZ, double toZ, double fromR, double toR) {
    return CutRegion.rectangle(fromZ, toZ, fromR, toR).outline();
  }

  private static Area area(List<PointZr> outline) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < outline.size(); i++) {
      PointZr point = outline.get(i);
      if (i == 0) {
        path.moveTo(point.zMm(), Math.max(0, point.rMm()));
      } else {
        path.lineTo(point.zMm(), Math.max(0, point.rMm()));
      }
    }
    path.closePath();
    return new Area(path);
  }

  /** Signed frusta under each side of the outlines: π/3·(z₂ − z₁)·(r₁² + r₁·r₂ + r₂²). */
  private static double frustaMm3(Area area) {
    double sum = 0;
    double[] c = new double[6];
    double startZ = 0;
    double startR = 0;
    double z = 0;
    double r = 0;
    for (PathIterator it = area.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        startZ = c[0];
        startR = c[1];
      } else {
        double toZ = kind == PathIterator.SEG_CLOSE ? startZ : c[0];
        double toR = kind == PathIterator.SEG_CLOSE ? startR : c[1];
        sum += Math.PI / 3 * (toZ - z) * (r * r + r * toR + toR * toR);
        c[0] = toZ;
        c[1] = toR;
      }
      z = c[0];
      r = c[1];
    }
    return Math.abs(sum);
  }
}
