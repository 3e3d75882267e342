package drumline.step.contour;

import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Splits the steps of one run of bores into those made from the front and those from the back. */
final class BoreRun {
  private static final double LEAST_POINT_DEG = 50;
  private static final double MOST_POINT_DEG = 75;

  private final List<Step> steps;
  private final double length;
  private final List<String> notes;

  BoreRun(List<Step> steps, double length, List<String> notes) {
    this.steps = steps;
    this.length = length;
    this.notes = notes;
  }

  void split(boolean fromFront, boolean fromBack, List<Bore> front, List<Bore> back) {
    boolean isThrough = fromFront && fromBack;
    int narrowest = isThrough ? narrowest() : fromFront ? steps.size() - 1 : -1;
    List<Step> own = steps.subList(0, narrowest + 1);
    List<Step> other = new ArrayList<>();
    for (int i = steps.size() - 1; i > narrowest; i--) {
      other.add(steps.get(i).turned(length));
    }
    back.addAll(inwards(other, isThrough));
    if (isThrough) {
      Step last = own.get(own.size() - 1);
      mouthBehind(last, back);
    }
    front.addAll(inwards(own, isThrough));
    if (isThrough) {
      double depth = back.isEmpty() ? 0 : back.get(back.size() - 1).to();
      int last = front.size() - 1;
      front.set(last, front.get(last).withEnd(length - depth, Bore.Bottom.THROUGH));
    }
  }

  /** The chamfer or radius at the far end of the narrowest bore, as a taper made from behind. */
  private static void mouthBehind(Step last, List<Bore> back) {
    Rim rim = last.back();
    if (rim.isMeasured()) {
      double from = back.isEmpty() ? 0 : back.get(back.size() - 1).to();
      back.add(
          new Bore(
              from,
              from + rim.sizeMm(),
              last.r1() + rim.radialMm(),
              last.r1(),
              Rim.NONE,
              Bore.Bottom.THROUGH));
    }
  }

  private int narrowest() {
    int best = -1;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).isCylinder() && (best < 0 || isNarrower(steps.get(i), steps.get(best)))) {
        best = i;
      }
    }
    return best < 0 ? steps.size() - 1 : best;
  }

  private static boolean isNarrower(Step s, Step best) {
    return Near.isSame(s.r0(), best.r0()) ? s.length() > best.length() : s.r0() < best.r0();
  }

  /** Steps as bores; the cones of drills become bottoms. */
  private List<Bore> inwards(List<Step> own, boolean isThrough) {
    List<Bore> bores = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      Step s = own.get(i);
      double from = bores.isEmpty() ? 0 : bores.get(bores.size() - 1).to();
      boolean isTip = s.r1() < Near.MM;
      boolean isLast = i == own.size() - 1;
      if (isPoint(s)
          && !bores.isEmpty()
          && bores.get(bores.size() - 1).isCylinder()
          && (isTip || isThrough || !isLast)) {
        int last = bores.size() - 1;
        bores.set(last, bores.get(last).withEnd(from, Bore.Bottom.DRILL_POINT));
        double point = 2 * Math.toDegrees(Math.atan2(s.r0() - s.r1(), s.length()));
        if (Math.abs(point - 118) > 1) {
          notes.add(
              String.format(
                  Locale.ROOT,
                  "the drill's cone below Ø%.3f mm has a point angle of %.1f°; drawings take 118°",
                  2 * s.r0(),
                  point));
        }
      } else if (isTip) {
        notes.add(
            String.format(
                Locale.ROOT,
                "NOT UNDERSTOOD: the bore ends in a cone of %.1f° half angle from Ø%.3f mm",
                Math.toDegrees(Math.atan2(s.r0() - s.r1(), s.length())),
                2 * s.r0()));
      } else {
        Bore.Bottom bottom = isLast && isThrough ? Bore.Bottom.THROUGH : Bore.Bottom.FLAT;
        bores.add(new Bore(from, s.z1(), s.r0(), s.r1(), s.front(), bottom));
        if (s.back().isMeasured() && !(isLast && isThrough)) {
          String where =
              String.format(Locale.ROOT, "bore Ø%.3f mm at depth %.3f mm", 2 * s.r1(), s.z1());
          OutsideSteps.note(notes, where, "bottom", s.back(), Rim.NONE);
        }
      }
    }
    return bores;
  }

  private static boolean isPoint(Step s) {
    double half = Math.toDegrees(Math.atan2(s.r0() - s.r1(), s.length()));
    return half >= LEAST_POINT_DEG && half <= MOST_POINT_DEG;
  }
}
