package drumline.shape.mesh;

import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the sides of a half-section are: threads and knurls by their steps, bores, the bar's own
 * surface, else turned.
 *
 * @param bands bands of threads and knurls
 * @param section the piece's half-section
 * @param barBands stretches that keep the bar's surface
 */
record SurfaceMarks(List<Band> bands, PartSection section, List<Band> barBands) {
  private static final double NEAR_MM = 0.3;

  /**
   * A stretch of a cylinder.
   *
   * @param fromMm where it begins
   * @param toMm where it ends
   * @param lowMm least radius
   * @param highMm greatest radius
   * @param mark what it is
   */
  record Band(double fromMm, double toMm, double lowMm, double highMm, Mark mark) {

    boolean holds(double zMm, double rMm) {
      return zMm > fromMm - 1e-6 && zMm < toMm + 1e-6 && rMm > lowMm && rMm < highMm;
    }
  }

  static SurfaceMarks of(Part part, Bar bar, PartSection section) {
    List<Band> bands = new ArrayList<>();
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      outside(part, thread).or(() -> inside(part, thread)).ifPresent(bands::add);
    }
    for (Knurl knurl : part.features(Knurl.class)) {
      part.findOutside(knurl.onElement())
          .ifPresent(
              s ->
                  bands.add(
                      band(knurl.fromZMm(), knurl.toZMm(), s.startDiameterMm() / 2, Mark.KNURL)));
    }
    List<Band> own = new ArrayList<>();
    for (OutsideStep step : part.outside()) {
      if (step.surface() == OutsideStep.Surface.BAR) {
        own.add(band(step.fromZMm(), step.toZMm(), bar.acrossCornersMm() / 2, Mark.BAR));
      }
    }
    return new SurfaceMarks(bands, section, own);
  }

  private static Band band(double fromMm, double toMm, double rMm, Mark mark) {
    return new Band(fromMm, toMm, rMm - NEAR_MM, rMm + NEAR_MM, mark);
  }

  private static Optional<Band> outside(Part part, ScrewThread thread) {
    return part.findOutside(thread.onElement())
        .map(
            s -> {
              double low = s.smallestDiameterMm() / 2;
              double high = s.largestDiameterMm() / 2;
              double slack = NEAR_MM + thread.size().pitchMm();
              boolean isFromBack = s.toZMm() > part.lengthMm() - 1e-6 && part.outside().size() > 1;
              double from = isFromBack ? s.toZMm() - thread.lengthMm() : s.fromZMm();
              return new Band(
                  from, from + thread.lengthMm(), low - slack, high + slack, Mark.THREAD);
            });
  }

  private static Optional<Band> inside(Part part, ScrewThread thread) {
    return part.findBore(thread.onElement()).map(s -> inside(part, thread, s));
  }

  private static Band inside(Part part, ScrewThread thread, BoreStep s) {
    double from =
        s.end() == End.FRONT
            ? s.fromDepthMm()
            : part.lengthMm() - s.fromDepthMm() - thread.lengthMm();
    return band(from, from + thread.lengthMm(), s.startDiameterMm() / 2, Mark.THREAD);
  }

  /** The outline with points where bands begin and end. */
  List<PointZr> divided(List<PointZr> outline) {
    List<PointZr> points = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      PointZr a = outline.get(i);
      PointZr b = outline.get((i + 1) % outline.size());
      points.add(a);
      List<Double> cuts = new ArrayList<>();
      for (Band band : bands) {
        for (double z : new double[] {band.fromMm(), band.toMm()}) {
          double share = (z - a.zMm()) / (b.zMm() - a.zMm());
          double r = a.rMm() + share * (b.rMm() - a.rMm());
          boolean isWithin = share > 1e-4 && share < 1 - 1e-4;
          if (isWithin && band.holds(z, r) && !cuts.contains(share)) {
            cuts.add(share);
          }
        }
      }
      cuts.sort(null);
      for (double share : cuts) {
        points.add(
            new PointZr(
                a.zMm() + share * (b.zMm() - a.zMm()), a.rMm() + share * (b.rMm() - a.rMm())));
      }
    }
    return points;
  }

  /** Mark of a side. */
  Mark of(PointZr a, PointZr b) {
    double z = (a.zMm() + b.zMm()) / 2;
    double r = (a.rMm() + b.rMm()) / 2;
    boolean isAlong = Math.abs(b.zMm() - a.zMm()) > 1e-9;
    for (Band band : bands) {
      if (isAlong && band.holds(z, r)) {
        return band.mark();
      }
    }
    for (Band band : barBands) {
      if (isAlong && a.rMm() == b.rMm() && band.holds(z, r)) {
        return band.mark();
      }
    }
    boolean isInside = isAlong && b.zMm() < a.zMm();
    return isInside ? Mark.BORED : Mark.TURNED;
  }
}
