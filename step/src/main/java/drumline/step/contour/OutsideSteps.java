package drumline.step.contour;

import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The outside as steps and grooves.
 *
 * @param steps steps front to back
 * @param grooves grooves front to back
 */
public record OutsideSteps(List<Step> steps, List<Recess> grooves) {
  /** A valley up to this width is a groove, a wider one a step; common practice. */
  static final double WIDEST_GROOVE_MM = 6;

  /** Copies the lists. */
  public OutsideSteps {
    steps = List.copyOf(steps);
    grooves = List.copyOf(grooves);
  }

  /** Reads stretches of the outside; what is simplified goes to the notes. */
  public static OutsideSteps of(List<Segment> segments, List<String> notes) {
    List<Step> steps = new ArrayList<>(Corners.steps(segments, notes));
    List<Recess> grooves = new ArrayList<>();
    int found = valley(steps);
    while (found >= 0) {
      grooves.add(0, groove(steps, found, notes));
      found = valley(steps);
    }
    grooves.sort(java.util.Comparator.comparingDouble(Recess::z0));
    return new OutsideSteps(steps, grooves);
  }

  /** Index of the narrowest valley that is a groove, or -1. */
  private static int valley(List<Step> steps) {
    int best = -1;
    for (int i = 1; i + 1 < steps.size(); i++) {
      Step s = steps.get(i);
      Step before = steps.get(i - 1);
      Step after = steps.get(i + 1);
      boolean isDeep = before.r1() > s.r0() + Near.MM && after.r0() > s.r1() + Near.MM;
      Step lower = before.r1() < after.r0() ? before : after;
      if (s.isCylinder()
          && s.isTurned()
          && isDeep
          && lower.isCylinder()
          && s.length() <= WIDEST_GROOVE_MM + Near.MM
          && (best < 0 || s.length() < steps.get(best).length())) {
        best = i;
      }
    }
    return best;
  }

  private static Recess groove(List<Step> steps, int i, List<String> notes) {
    Step groove = steps.get(i);
    Step before = steps.get(i - 1);
    Step after = steps.get(i + 1);
    String where = String.format(Locale.ROOT, "groove at z %.3f mm", groove.z0());
    note(notes, where, "bottom", groove.front(), groove.back());
    if (Near.isSame(before.r1(), after.r0())
        && before.isTurned() == after.isTurned()
        && before.isCylinder()
        && after.isCylinder()) {
      note(notes, where, "mouth", before.back(), after.front());
      steps.set(i - 1, before.withEnd(after.z1(), after.r1(), after.back()));
      steps.remove(i + 1);
    } else if (before.r1() < after.r0()) {
      note(notes, where, "mouth", before.back(), Rim.NONE);
      steps.set(i - 1, before.withEnd(groove.z1(), before.r1(), Rim.NONE));
    } else {
      note(notes, where, "mouth", Rim.NONE, after.front());
      steps.set(i + 1, after.withStart(groove.z0(), after.r0(), Rim.NONE));
    }
    steps.remove(i);
    return new Recess(Recess.Place.OUTSIDE, groove.z0(), groove.z1(), groove.r0(), 0);
  }

  static void note(List<String> notes, String where, String part, Rim a, Rim b) {
    for (Rim rim : new Rim[] {a, b}) {
      if (rim.isMeasured()) {
        notes.add(
            where + ": edge " + rim + " at its " + part + " is not written: no place in the form");
      }
    }
  }
}
