package drumline.planner.check;

import static drumline.planner.check.Floor.say;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.machine.PickUp;
import java.util.ArrayList;
import java.util.List;

/** Cut-off, bar feed, pick-up spindle and the cycle that holds everything. */
final class CycleChecks {
  private final Floor floor;
  private final Timeline timeline;

  CycleChecks(Floor floor) {
    this.floor = floor;
    timeline = floor.timeline();
  }

  List<Finding> findings() {
    String cycle = say("cycle %.3f s", timeline.cycleS());
    return List.of(
        Finding.of("cut-off", "last position", cutOff()),
        Finding.of("bar-feed", "last position", barFeed()),
        Finding.of("pick-up", floor.machine().pickUp() == null ? "none" : cycle, pickUp()),
        Finding.of("cycle", cycle, cycle()),
        Finding.of("slack", cycle, slack()));
  }

  private List<String> cutOff() {
    List<String> broken = new ArrayList<>();
    floor
        .cutOff()
        .ifPresent(
            cut -> {
              if (cut.position() != floor.machine().positions().size()) {
                broken.add(cut.words() + " is not in the last position");
              }
              for (Spot other : floor.at(cut.position())) {
                if (!other.equals(cut) && other.gapS(cut) < -Spot.ROUNDING_S) {
                  broken.add(other.words() + " has not ended when " + cut.words() + " begins");
                }
              }
            });
    return broken;
  }

  private List<String> barFeed() {
    List<String> broken = new ArrayList<>();
    floor
        .cutOff()
        .ifPresent(
            cut -> {
              double fedS = cut.span().endS() + floor.machine().barFeed().feedOutS();
              if (fedS > timeline.workS() + Spot.ROUNDING_S) {
                broken.add(
                    say(
                        "the bar is fed until %.3f s, the drum indexes at %.3f s",
                        fedS, timeline.workS()));
              }
            });
    return broken;
  }

  private List<String> pickUp() {
    PickUp pickUp = floor.machine().pickUp();
    if (pickUp == null) {
      return List.of();
    }
    List<String> broken = new ArrayList<>();
    floor
        .cutOff()
        .filter(cut -> cut.span().startS() < pickUp.gripS() - Spot.ROUNDING_S)
        .ifPresent(cut -> broken.add(cut.words() + " begins before the piece is gripped"));
    double readyS = floor.partedS() + pickUp.retractS();
    double workedS =
        floor.at(floor.machine().positions().size() + 1).stream()
            .mapToDouble(spot -> spot.span().endS())
            .max()
            .orElse(readyS);
    double backS = Math.max(readyS, workedS) + pickUp.ejectS() + pickUp.returnS();
    double allowedS = timeline.cycleS() * pickUp.spindleCount();
    if (backS > allowedS + Spot.ROUNDING_S) {
      broken.add(say("the pick-up spindle is away for %.3f s of %.3f s", backS, allowedS));
    }
    PositionTimeline back = timeline.back();
    if (back == null || back.busyS() < backS - Spot.ROUNDING_S) {
      broken.add(say("the pick-up spindle's round trip of %.3f s is not shown", backS));
    }
    return broken;
  }

  private List<String> cycle() {
    List<String> broken = new ArrayList<>();
    double indexS = floor.machine().indexS();
    if (Math.abs(timeline.indexS() - indexS) > Spot.ROUNDING_S) {
      broken.add(say("index of %.3f s instead of %.3f s", timeline.indexS(), indexS));
    }
    for (Spot spot : floor.spots()) {
      if (!floor.isBack(spot)
          && spot.span().endS() + indexS > timeline.cycleS() + Spot.ROUNDING_S) {
        broken.add(say("%s does not end within %.3f s", spot.words(), timeline.cycleS() - indexS));
      }
    }
    return broken;
  }

  private List<String> slack() {
    List<String> broken = new ArrayList<>();
    for (PositionTimeline position : timeline.positions()) {
      double lastS =
          floor.at(position.position()).stream()
              .mapToDouble(spot -> spot.span().endS())
              .max()
              .orElse(0);
      boolean isGoverning = position.position() == timeline.governing();
      double leftS = timeline.workS() - position.busyS();
      if (position.busyS() < lastS - Spot.ROUNDING_S
          || Math.abs(position.slackS() - leftS) > Spot.ROUNDING_S
          || (isGoverning && leftS > Spot.ROUNDING_S)) {
        broken.add(
            say(
                "position %d is busy until %.3f s with slack %.3f s",
                position.position(), position.busyS(), position.slackS()));
      }
    }
    return broken;
  }
}
