package drumline.cycle.clock;

import drumline.cycle.timeline.TimeElement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How long an operation takes on a slide at a spindle speed: rapid to the cut, cut, dwell, rapid
 * away.
 *
 * <p>Cut: t = 60·u/n + tf; dwell: t = 60·ud/n; with u and ud turns of the spindle, n its speed in
 * rev/min and tf fixed time in s. Where the spindle is held, controlled or free, the driven tool's
 * own speed counts for n. Rapid over a way s: t = 2·√(s/a) up to s = v²/a, else t = s/v + v/a, with
 * v in mm/s and a in mm/s².
 *
 * <p>Source: [BASIS] 2.1 and 2.2 (time of a cut), constant acceleration from and to rest (derived).
 * Known limits: one axis at a time, no jerk limit; a tool that stands in a hole or groove at the
 * end of its cut goes back over its last travel too, all others lift off over the approach only.
 */
public final class OperationTime {
  private static final Set<OperationKind> ENDS_INSIDE =
      EnumSet.of(
          OperationKind.FORM_TURN,
          OperationKind.GROOVE,
          OperationKind.FACE_GROOVE,
          OperationKind.SPOT,
          OperationKind.DRILL,
          OperationKind.COUNTERBORE,
          OperationKind.REAM,
          OperationKind.ROUGH_BORE,
          OperationKind.FINISH_BORE,
          OperationKind.CUT_OFF);

  private OperationTime() {}

  /**
   * Time in seconds to go a way by rapid, from rest to rest.
   *
   * @param wayMm way, 0 or more
   * @throws IllegalArgumentException if the way is negative, or the slide's rapid speed or
   *     acceleration is not above 0
   */
  public static double rapidS(double wayMm, ToolSlide slide) {
    double speedMmPerS = slide.rapidMPerMin() * 1000 / 60;
    double accelerationMmPerS2 = slide.accelerationMPerS2() * 1000;
    if (!(wayMm >= 0)) {
      throw new IllegalArgumentException("wayMm is " + wayMm + ", allowed: 0 or more");
    }
    if (!(speedMmPerS > 0 && accelerationMmPerS2 > 0)) {
      throw new IllegalArgumentException(
          "slide " + slide.id() + " has no rapid speed or acceleration, allowed: above 0");
    }
    double fullSpeedWayMm = speedMmPerS * speedMmPerS / accelerationMmPerS2;
    return wayMm <= fullSpeedWayMm
        ? 2 * Math.sqrt(wayMm / accelerationMmPerS2)
        : wayMm / speedMmPerS + speedMmPerS / accelerationMmPerS2;
  }

  /**
   * The operation's elements in order, without gaps; those that take no time are left out.
   *
   * @param revPerMin work spindle speed, above 0 for a turning spindle; else not read
   * @param startS begin of the approach
   * @throws IllegalArgumentException if an element that needs turns has no speed to count them with
   */
  public static List<TimeElement> elements(
      Operation operation, ToolSlide slide, double revPerMin, double startS) {
    CutSpec cut = operation.cut();
    List<TimeElement> elements = new ArrayList<>(4);
    double t = startS;
    t = add(elements, TimeElement.Kind.APPROACH, t, rapidS(cut.approachMm(), slide));
    double cutS = turnsS(operation, cut.revolutionsCount(), revPerMin) + cut.fixedS();
    t = add(elements, TimeElement.Kind.CUT, t, cutS);
    double dwellS = turnsS(operation, cut.dwellRevCount(), revPerMin);
    t = add(elements, TimeElement.Kind.DWELL, t, dwellS);
    add(elements, TimeElement.Kind.RETRACT, t, rapidS(retractMm(operation), slide));
    return List.copyOf(elements);
  }

  /** Whole time in seconds; arguments as of {@link #elements}. */
  public static double lengthS(Operation operation, ToolSlide slide, double revPerMin) {
    CutSpec cut = operation.cut();
    return rapidS(cut.approachMm(), slide)
        + turnsS(operation, cut.revolutionsCount() + cut.dwellRevCount(), revPerMin)
        + cut.fixedS()
        + rapidS(retractMm(operation), slide);
  }

  /** Way in mm that the tool goes back after its cut. */
  public static double retractMm(Operation operation) {
    CutSpec cut = operation.cut();
    double insideMm =
        ENDS_INSIDE.contains(operation.kind()) ? cut.travelMm() / Math.max(1, cut.passCount()) : 0;
    return cut.approachMm() + insideMm;
  }

  private static double turnsS(Operation operation, double turnsCount, double revPerMin) {
    if (turnsCount == 0) {
      return 0;
    }
    double n =
        operation.condition() == SpindleCondition.TURNING
            ? revPerMin
            : operation.cut().toolRevPerMin();
    if (!(n > 0)) {
      throw new IllegalArgumentException(
          "speed of " + operation.id() + " is " + n + " rev/min, allowed: above 0");
    }
    return 60 * turnsCount / n;
  }

  private static double add(
      List<TimeElement> elements, TimeElement.Kind kind, double fromS, double lengthS) {
    if (lengthS > 0) {
      elements.add(new TimeElement(kind, fromS, fromS + lengthS));
    }
    return fromS + lengthS;
  }
}
