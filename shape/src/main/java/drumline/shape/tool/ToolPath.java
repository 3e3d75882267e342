package drumline.shape.tool;

import drumline.shop.operation.CutRegion.PointZr;
import java.util.List;

/**
 * Way of a tool's cutting point.
 *
 * @param fromMm where it waits
 * @param cut corners of its way while it cuts, first to last
 * @param toMm where it goes back to
 */
public record ToolPath(PointZr fromMm, List<PointZr> cut, PointZr toMm) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the cut has no corner
   */
  public ToolPath {
    cut = List.copyOf(cut);
    if (cut.isEmpty()) {
      throw new IllegalArgumentException("cut: no corner, allowed: 1 or more");
    }
  }

  /** Where cutting begins. */
  public PointZr begin() {
    return cut.get(0);
  }

  /** Where cutting ends. */
  public PointZr end() {
    return cut.get(cut.size() - 1);
  }

  /** The whole way: approach, cut, retract. */
  public List<PointZr> corners() {
    List<PointZr> all = new java.util.ArrayList<>();
    all.add(fromMm);
    all.addAll(cut);
    all.add(toMm);
    return List.copyOf(all);
  }

  /** Length in mm of the way while it cuts. */
  public double cutLengthMm() {
    double lengthMm = 0;
    for (int i = 1; i < cut.size(); i++) {
      lengthMm += distanceMm(cut.get(i - 1), cut.get(i));
    }
    return lengthMm;
  }

  /** The place on the approach; {@code shareRatio} from 0 at the begin to 1 at the cut. */
  public PointZr approaching(double shareRatio) {
    return between(fromMm, begin(), shareRatio);
  }

  /** The place on the retract; {@code shareRatio} from 0 at the cut's end to 1. */
  public PointZr retracting(double shareRatio) {
    return between(end(), toMm, shareRatio);
  }

  /** The place on the cut; {@code shareRatio} from 0 to 1 of its length. */
  public PointZr cutting(double shareRatio) {
    double leftMm = shareRatio * cutLengthMm();
    for (int i = 1; i < cut.size(); i++) {
      double stepMm = distanceMm(cut.get(i - 1), cut.get(i));
      if (leftMm <= stepMm && stepMm > 0) {
        return between(cut.get(i - 1), cut.get(i), leftMm / stepMm);
      }
      leftMm -= stepMm;
    }
    return end();
  }

  private static PointZr between(PointZr from, PointZr to, double shareRatio) {
    double share = Math.max(0, Math.min(1, shareRatio));
    return new PointZr(
        from.zMm() + share * (to.zMm() - from.zMm()), from.rMm() + share * (to.rMm() - from.rMm()));
  }

  private static double distanceMm(PointZr a, PointZr b) {
    return Math.hypot(a.zMm() - b.zMm(), a.rMm() - b.rMm());
  }

  /** The same for work on the other end of a piece of this length. */
  ToolPath turnedRound(double pieceLengthMm) {
    return new ToolPath(
        turned(fromMm, pieceLengthMm),
        cut.stream().map(point -> turned(point, pieceLengthMm)).toList(),
        turned(toMm, pieceLengthMm));
  }

  private static PointZr turned(PointZr point, double pieceLengthMm) {
    return new PointZr(pieceLengthMm - point.zMm(), point.rMm());
  }
}
