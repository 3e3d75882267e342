package drumline.step.contour;

import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The bores as steps from both ends, and the grooves in them.
 *
 * @param front steps from the front face inwards
 * @param back steps from the back face inwards, measured from that face
 * @param grooves grooves in them, measured from the front face
 */
public record BoreSteps(List<Bore> front, List<Bore> back, List<Recess> grooves) {

  /** Copies the lists. */
  public BoreSteps {
    front = List.copyOf(front);
    back = List.copyOf(back);
    grooves = List.copyOf(grooves);
  }

  /**
   * Reads stretches of the bores.
   *
   * @param length length of the piece
   */
  public static BoreSteps of(List<Segment> segments, double length, List<String> notes) {
    List<Recess> grooves = new ArrayList<>();
    List<Bore> front = new ArrayList<>();
    List<Bore> back = new ArrayList<>();
    for (List<Segment> run : runs(segments)) {
      boolean fromFront = run.get(0).z0() < Near.MM;
      boolean fromBack = run.get(run.size() - 1).z1() > length - Near.MM;
      if (!fromFront && !fromBack) {
        notes.add(
            String.format(
                Locale.ROOT,
                "NOT UNDERSTOOD: a closed room at the axis from z %.3f to %.3f mm",
                run.get(0).z0(),
                run.get(run.size() - 1).z1()));
      } else {
        List<Step> steps = new ArrayList<>(Corners.steps(run, notes));
        grooves.addAll(grooves(steps, notes));
        new BoreRun(steps, length, notes).split(fromFront, fromBack, front, back);
      }
    }
    return new BoreSteps(front, back, grooves);
  }

  private static List<List<Segment>> runs(List<Segment> segments) {
    List<List<Segment>> runs = new ArrayList<>();
    double reached = Double.NaN;
    for (Segment segment : segments) {
      if (runs.isEmpty() || Math.abs(segment.z0() - reached) > Near.MM) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(segment);
      reached = segment.z1();
    }
    return runs;
  }

  /** Takes out widenings that both neighbours are narrower than. */
  private static List<Recess> grooves(List<Step> steps, List<String> notes) {
    List<Recess> grooves = new ArrayList<>();
    int i = bulge(steps);
    while (i >= 0) {
      Step groove = steps.get(i);
      String where = String.format(Locale.ROOT, "inside groove at z %.3f mm", groove.z0());
      OutsideSteps.note(notes, where, "bottom", groove.front(), groove.back());
      Step before = steps.get(i - 1);
      Step after = steps.get(i + 1);
      if (Near.isSame(before.r1(), after.r0()) && before.isCylinder() && after.isCylinder()) {
        OutsideSteps.note(notes, where, "mouth", before.back(), after.front());
        steps.set(i - 1, before.withEnd(after.z1(), after.r1(), after.back()));
        steps.remove(i + 1);
      } else if (before.r1() > after.r0()) {
        steps.set(i - 1, before.withEnd(groove.z1(), before.r1(), Rim.NONE));
      } else {
        steps.set(i + 1, after.withStart(groove.z0(), after.r0(), Rim.NONE));
      }
      steps.remove(i);
      grooves.add(new Recess(Recess.Place.INSIDE, groove.z0(), groove.z1(), groove.r0(), 0));
      i = bulge(steps);
    }
    Collections.reverse(grooves);
    return grooves;
  }

  private static int bulge(List<Step> steps) {
    int best = -1;
    for (int i = 1; i + 1 < steps.size(); i++) {
      Step s = steps.get(i);
      Step before = steps.get(i - 1);
      Step after = steps.get(i + 1);
      boolean isWide = before.r1() < s.r0() - Near.MM && after.r0() < s.r1() - Near.MM;
      Step wider = before.r1() > after.r0() ? before : after;
      if (s.isCylinder()
          && isWide
          && wider.isCylinder()
          && (best < 0 || s.length() < steps.get(best).length())) {
        best = i;
      }
    }
    return best;
  }
}
