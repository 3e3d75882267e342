package drumline.shape.section;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;

/**
 * A circular arc as chords: as many that no chord leaves the arc by more than 1 µm, nor turns by
 * more than 5°.
 *
 * <p>Formula: e = R·(1 − cos(α/2)) with e error in mm (0.001), R radius in mm (greater than 0), α
 * angle of one chord.
 *
 * <p>Source: geometry of the circular segment.
 */
final class ArcChords {

  static final double ERROR_MM = 0.001;
  private static final double LARGEST_STEP_RAD = Math.toRadians(5);

  private ArcChords() {}

  /** Points after {@code from} up to and with the arc's end; a negative turn goes clockwise. */
  static List<PointZr> points(PointZr centre, PointZr from, double turnRad) {
    double radiusMm = Math.hypot(from.zMm() - centre.zMm(), from.rMm() - centre.rMm());
    double startRad = Math.atan2(from.rMm() - centre.rMm(), from.zMm() - centre.zMm());
    int count = count(radiusMm, Math.abs(turnRad));
    List<PointZr> points = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      double angleRad = startRad + turnRad * i / count;
      points.add(
          new PointZr(
              centre.zMm() + radiusMm * Math.cos(angleRad),
              centre.rMm() + radiusMm * Math.sin(angleRad)));
    }
    return points;
  }

  private static int count(double radiusMm, double turnRad) {
    double byErrorRad = 2 * Math.acos(Math.max(0, 1 - ERROR_MM / radiusMm));
    return (int) Math.ceil(turnRad / Math.min(byErrorRad, LARGEST_STEP_RAD) - 1e-9);
  }
}
