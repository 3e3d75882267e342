package drumline.planner.check;

import static drumline.planner.check.Floor.say;

import drumline.cycle.timeline.TimeElement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.CutSpec;
import java.util.ArrayList;
import java.util.List;

/** Whether tools have the time that cutting and moving take. */
final class TimeChecks {
  private final Floor floor;

  TimeChecks(Floor floor) {
    this.floor = floor;
  }

  List<Finding> findings() {
    String spots = floor.spots().size() + " operations";
    return List.of(
        Finding.of("elements-without-gaps", spots, gaps()),
        Finding.of("cutting-time", spots, cutting()),
        Finding.of("rapid-time", spots, rapids()));
  }

  private List<String> gaps() {
    List<String> broken = new ArrayList<>();
    for (Spot spot : floor.spots()) {
      double t = spot.span().startS();
      boolean isWhole = true;
      for (TimeElement element : spot.span().elements()) {
        isWhole &= Math.abs(element.startS() - t) < Spot.ROUNDING_S && element.endS() >= t;
        t = element.endS();
      }
      if (!isWhole || Math.abs(t - spot.span().endS()) > Spot.ROUNDING_S) {
        broken.add(spot.words() + " has a gap or overlap between its elements");
      }
    }
    return broken;
  }

  private List<String> cutting() {
    List<String> broken = new ArrayList<>();
    for (Spot spot : floor.spots()) {
      CutSpec cut = spot.operation().cut();
      double turnsPerS = (spot.turns() ? spot.span().spindleRevPerMin() : cut.toolRevPerMin()) / 60;
      double cutS = cut.fixedS() + turnsS(cut.revolutionsCount(), turnsPerS);
      double dwellS = turnsS(cut.dwellRevCount(), turnsPerS);
      if (spot.lengthS(TimeElement.Kind.CUT) < cutS - Spot.ROUNDING_S
          || spot.lengthS(TimeElement.Kind.DWELL) < dwellS - Spot.ROUNDING_S) {
        broken.add(
            say(
                "%s cuts for %.3f s and dwells for %.3f s, needs %.3f s and %.3f s",
                spot.words(),
                spot.lengthS(TimeElement.Kind.CUT),
                spot.lengthS(TimeElement.Kind.DWELL),
                cutS,
                dwellS));
      }
    }
    return broken;
  }

  private static double turnsS(double turnsCount, double turnsPerS) {
    return turnsCount == 0 ? 0 : turnsCount / turnsPerS;
  }

  private List<String> rapids() {
    List<String> broken = new ArrayList<>();
    for (Spot spot : floor.spots()) {
      CutSpec cut = spot.operation().cut();
      double inS = rapidS(cut.approachMm(), spot.slide());
      double outS = rapidS(cut.approachMm() + insideMm(spot), spot.slide());
      if (spot.lengthS(TimeElement.Kind.APPROACH) < inS - Spot.ROUNDING_S
          || spot.lengthS(TimeElement.Kind.RETRACT) < outS - Spot.ROUNDING_S) {
        broken.add(
            say("%s needs %.3f s to come and %.3f s to go by rapid", spot.words(), inS, outS));
      }
    }
    return broken;
  }

  /** Way that a tool stands inside the work at the end of its cut. */
  private static double insideMm(Spot spot) {
    CutSpec cut = spot.operation().cut();
    return switch (spot.operation().kind()) {
      case SPOT,
          DRILL,
          COUNTERBORE,
          REAM,
          ROUGH_BORE,
          FINISH_BORE,
          FORM_TURN,
          GROOVE,
          FACE_GROOVE,
          CUT_OFF ->
          cut.travelMm() / Math.max(1, cut.passCount());
      default -> 0;
    };
  }

  /** With the peak speed vp = min(v, √(a·s)): t = s/vp + vp/a. */
  private static double rapidS(double wayMm, ToolSlide slide) {
    if (wayMm == 0) {
      return 0;
    }
    double wayM = wayMm / 1000;
    double peakMPerS =
        Math.min(slide.rapidMPerMin() / 60, Math.sqrt(slide.accelerationMPerS2() * wayM));
    return wayM / peakMPerS + peakMPerS / slide.accelerationMPerS2();
  }
}
