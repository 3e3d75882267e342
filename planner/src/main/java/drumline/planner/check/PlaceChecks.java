package drumline.planner.check;

import drumline.shop.machine.Axis;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.WorkEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where operations stand, and which follows which. */
final class PlaceChecks {
  private final Floor floor;

  PlaceChecks(Floor floor) {
    this.floor = floor;
  }

  List<Finding> findings() {
    int slides = (int) allSlides().count();
    return List.of(
        Finding.of("slide-fits", slides + " slides", slideFits()),
        Finding.of("slide-seats", slides + " slides", seats()),
        Finding.of("slide-one-tool-at-a-time", slides + " slides", oneAtATime()),
        Finding.of("order", floor.route().orders().size() + " order rules", orders()),
        Finding.of("pairs", floor.route().pairs().size() + " pair rules", pairs()));
  }

  private Stream<ToolSlide> allSlides() {
    Stream<ToolSlide> back =
        floor.machine().pickUp() == null ? Stream.empty() : floor.pickUp().slides().stream();
    return Stream.concat(floor.machine().drumSlides(), back);
  }

  private List<String> slideFits() {
    List<String> broken = new ArrayList<>();
    for (Spot spot : floor.spots()) {
      boolean isBack = spot.slide().kind() == SlideKind.BACK;
      WorkEnd end = spot.operation().end();
      if ((isBack && end == WorkEnd.FRONT) || (!isBack && end == WorkEnd.BACK)) {
        broken.add(spot.words() + " is done at the wrong end of the piece");
      }
      if (!isBack && !spot.operation().slides().contains(spot.slide().kind())) {
        broken.add(spot.words() + " works from the wrong side");
      }
      spot.operation().equipment().stream()
          .filter(kind -> !spot.slide().canHave(kind))
          .forEach(kind -> broken.add(spot.words() + " lacks " + kind));
      if (!isBack && !hasAxes(spot)) {
        broken.add(spot.words() + " lacks an axis");
      }
    }
    return broken;
  }

  /** Tools that go along the work need Z from any side, tools that go across it need X. */
  private static boolean hasAxes(Spot spot) {
    boolean hasX = spot.slide().axes().contains(Axis.X);
    boolean hasZ = spot.slide().axes().contains(Axis.Z);
    boolean isCross = spot.slide().kind() == SlideKind.CROSS;
    OperationKind kind = spot.operation().kind();
    return switch (kind) {
      case THREAD_TURN, INSIDE_GROOVE -> hasX && hasZ;
      case ROUGH_TURN, FINISH_TURN, BURNISH, MILL_SLOT, ENGRAVE -> hasZ && (hasX || !isCross);
      case FACE -> hasX && (hasZ || isCross);
      default -> isCross ? hasX : hasZ;
    };
  }

  private List<String> seats() {
    return allSlides()
        .filter(slide -> countOn(slide) > slide.seatCount())
        .map(slide -> slide.id() + " carries " + countOn(slide) + " tools on " + slide.seatCount())
        .toList();
  }

  private long countOn(ToolSlide slide) {
    return floor.spots().stream().filter(spot -> spot.slide().id().equals(slide.id())).count();
  }

  private List<String> oneAtATime() {
    return floor.inPairs(
        (one, other) ->
            one.slide().id().equals(other.slide().id())
                    && one.gapS(other) < one.slide().toolShiftS() - Spot.ROUNDING_S
                ? Optional.of(
                    other.words() + " begins before its slide is done with " + one.words())
                : Optional.empty());
  }

  private List<String> orders() {
    List<String> broken = new ArrayList<>();
    for (OrderRule rule : floor.route().orders()) {
      Spot before = floor.spot(rule.beforeId());
      Spot after = floor.spot(rule.afterId());
      boolean isKept =
          before.position() < after.position()
              || (before.position() == after.position() && before.gapS(after) >= -Spot.ROUNDING_S);
      if (!isKept) {
        broken.add(after.words() + " does not follow " + before.words() + ": " + rule.reason());
      }
    }
    return broken;
  }

  private List<String> pairs() {
    List<String> broken = new ArrayList<>();
    for (PairRule rule : floor.route().pairs()) {
      Spot one = floor.spot(rule.oneId());
      Spot other = floor.spot(rule.otherId());
      boolean isShared = one.position() == other.position();
      boolean isKept =
          switch (rule.kind()) {
            case SAME_POSITION -> isShared;
            case OTHER_POSITION -> !isShared;
            case NOT_TOGETHER -> !isShared || !one.overlaps(other);
          };
      if (!isKept) {
        broken.add(
            one.words() + " and " + other.words() + " break " + rule.kind() + ": " + rule.reason());
      }
    }
    return broken;
  }
}
