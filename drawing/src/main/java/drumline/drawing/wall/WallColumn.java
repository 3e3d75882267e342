package drumline.drawing.wall;

import drumline.cycle.timeline.PositionTimeline;
import java.util.List;
import java.util.Optional;

/**
 * One position's column.
 *
 * @param timeline what happens there
 * @param place drum or pick-up spindle
 * @param x left side
 * @param width width
 * @param fixedX left side of the narrow lane for what the machine does without tools
 * @param fixedWidth width of that lane, 0 where nothing of the kind happens
 * @param lanes tool slides, left to right
 * @param rank whether it sets the cycle
 */
record WallColumn(
    PositionTimeline timeline,
    Place place,
    double x,
    double width,
    double fixedX,
    double fixedWidth,
    List<WallLane> lanes,
    Rank rank) {

  static final double SPINDLE_WIDTH = 15;

  enum Place {
    DRUM,
    PICK_UP
  }

  enum Rank {
    GOVERNS,
    FOLLOWS
  }

  WallColumn {
    lanes = List.copyOf(lanes);
  }

  double right() {
    return x + width;
  }

  double middle() {
    return x + width / 2;
  }

  String name() {
    return place == Place.DRUM ? String.valueOf(timeline.position()) : "back";
  }

  String words() {
    return place == Place.DRUM ? "position " + timeline.position() : "pick-up spindle";
  }

  Optional<WallLane> findLane(String slideId) {
    return lanes.stream().filter(lane -> lane.slideId().equals(slideId)).findFirst();
  }
}
