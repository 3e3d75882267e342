package drumline.planner.check;

import static drumline.planner.check.Floor.say;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.SpindleSpan;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.OperationKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the spindles do, and whether they have the time to come to it. */
final class SpindleChecks {
  private final Floor floor;

  SpindleChecks(Floor floor) {
    this.floor = floor;
  }

  List<Finding> findings() {
    String spots = floor.spots().size() + " operations";
    return List.of(
        Finding.of("spindle-condition", spots, conditions()),
        Finding.of("spindle-change", spots, changes()),
        Finding.of("spindle-first-condition", spots, firsts()),
        Finding.of("spindle-trace", spots, trace()),
        Finding.of("spindle-speed", spots, speeds()),
        Finding.of("common-speed", spots, commonSpeed()));
  }

  private List<String> conditions() {
    return floor.inPairs(
        (one, other) -> {
          boolean isMixed =
              one.stands()
                  || other.stands()
                  || (one.turns() && other.turns() && one.revPerMin() != other.revPerMin());
          return isMixed && one.overlaps(other)
              ? Optional.of(one.words() + " and " + other.words() + " want different conditions")
              : Optional.empty();
        });
  }

  private List<String> changes() {
    return floor.inPairs(
        (one, other) -> {
          if (one.isFree() || other.isFree() || one.overlaps(other)) {
            return Optional.empty();
          }
          double neededS =
              Math.abs(other.revPerMin() - one.revPerMin()) / floor.runUpRevPerMinPerS(one);
          neededS += one.turns() && other.stands() ? floor.orientS(one) : 0;
          return one.gapS(other) < neededS - Spot.ROUNDING_S
              ? Optional.of(
                  say(
                      "%s follows %s after %.3f s of %.3f s",
                      other.words(), one.words(), one.gapS(other), neededS))
              : Optional.empty();
        });
  }

  private List<String> firsts() {
    List<String> broken = new ArrayList<>();
    for (Spot spot : floor.spots()) {
      double n = spot.revPerMin();
      double fromS = -floor.timeline().indexS();
      double changeRevPerMin = Math.max(n, floor.machine().drive().highestRevPerMin() - n);
      if (floor.isBack(spot)) {
        fromS = floor.partedS();
        changeRevPerMin = floor.cutOff().map(cut -> Math.abs(cut.revPerMin() - n)).orElse(0.0);
        if (spot.span().startS() < fromS + floor.pickUp().retractS() - Spot.ROUNDING_S) {
          broken.add(spot.words() + " begins before the piece has reached the back tools");
        }
      }
      double neededS =
          spot.isFree()
              ? 0
              : changeRevPerMin / floor.runUpRevPerMinPerS(spot)
                  + (spot.stands() ? floor.orientS(spot) : 0);
      boolean isAfterIndex = spot.span().startS() >= -Spot.ROUNDING_S;
      if (!isAfterIndex || spot.span().startS() - fromS < neededS - Spot.ROUNDING_S) {
        broken.add(say("%s begins before its spindle is there", spot.words()));
      }
    }
    return broken;
  }

  private List<String> trace() {
    List<String> broken = new ArrayList<>();
    List<PositionTimeline> all = new ArrayList<>(floor.timeline().positions());
    PositionTimeline back = floor.timeline().back();
    if (back != null) {
      all.add(back);
    }
    for (PositionTimeline position : all) {
      for (Spot spot : floor.at(position.position())) {
        boolean isKept =
            spot.isFree()
                || position.spindle().stream()
                    .filter(s -> s.kind() == SpindleSpan.Kind.KEEP)
                    .filter(s -> s.condition() == spot.operation().condition())
                    .filter(s -> s.revPerMin() == spot.revPerMin())
                    .anyMatch(
                        s ->
                            s.startS() <= spot.span().startS() + Spot.ROUNDING_S
                                && spot.span().endS() <= s.endS() + Spot.ROUNDING_S);
        if (!isKept) {
          broken.add(spot.words() + " is not inside a time when its spindle keeps its condition");
        }
      }
    }
    return broken;
  }

  private List<String> speeds() {
    List<String> broken = new ArrayList<>();
    SpindleDrive drive = floor.machine().drive();
    for (Spot spot : floor.spots()) {
      CutSpec cut = spot.operation().cut();
      double lowest = floor.isBack(spot) ? 0 : drive.lowestRevPerMin();
      double highest =
          floor.isBack(spot) ? floor.pickUp().highestRevPerMin() : drive.highestRevPerMin();
      if (spot.operation().kind() == OperationKind.CUT_OFF && floor.machine().pickUp() != null) {
        highest = Math.min(highest, floor.pickUp().highestRevPerMin());
      }
      lowest = Math.max(lowest, cut.lowestRevPerMin());
      highest = Math.min(highest, cut.highestRevPerMin());
      double room = 1e-9 * highest;
      boolean isInside = spot.revPerMin() >= lowest - room && spot.revPerMin() <= highest + room;
      if (spot.turns() && !isInside) {
        broken.add(
            say(
                "%s turns at %.1f rev/min, allowed %.1f to %.1f",
                spot.words(), spot.revPerMin(), lowest, highest));
      }
    }
    return broken;
  }

  private List<String> commonSpeed() {
    if (floor.machine().drive().coupling() != SpindleDrive.Coupling.COMMON) {
      return List.of();
    }
    Set<Double> speeds =
        floor.spots().stream()
            .filter(spot -> spot.turns() && !floor.isBack(spot))
            .map(Spot::revPerMin)
            .collect(Collectors.toCollection(TreeSet::new));
    return speeds.size() <= 1
        ? List.of()
        : List.of("the drum would have to turn at " + speeds + " rev/min at once");
  }
}
