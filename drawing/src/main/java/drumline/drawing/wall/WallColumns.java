package drumline.drawing.wall;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.drawing.wall.WallColumn.Place;
import drumline.drawing.wall.WallColumn.Rank;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SlideKind;
import drumline.shop.machine.ToolSlide;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Shares the width of the wall among positions and slides; slides without work get less. */
final class WallColumns {

  private static final double IDLE_WEIGHT = 0.4;
  private static final double COLUMN_GAP = 9;
  private static final double BACK_GAP = 24;
  private static final double FIXED_WIDTH = 15;

  private final Timeline timeline;
  private final Machine machine;

  WallColumns(Timeline timeline, Machine machine) {
    this.timeline = timeline;
    this.machine = machine;
  }

  List<WallColumn> of(double left, double right) {
    List<PositionTimeline> all = new ArrayList<>(timeline.positions());
    PositionTimeline back = timeline.back();
    double fixed = COLUMN_GAP * (all.size() - 1);
    if (back != null) {
      all.add(back);
      fixed += BACK_GAP;
    }
    double weight = 0;
    for (PositionTimeline position : all) {
      fixed += WallColumn.SPINDLE_WIDTH + fixedWidth(position);
      weight += weight(position, slides(position));
    }
    double perWeight = (right - left - fixed) / weight;
    List<WallColumn> columns = new ArrayList<>();
    double x = left;
    for (PositionTimeline position : all) {
      x += columns.isEmpty() ? 0 : place(position) == Place.PICK_UP ? BACK_GAP : COLUMN_GAP;
      WallColumn column = column(position, x, perWeight);
      columns.add(column);
      x = column.right();
    }
    return columns;
  }

  private WallColumn column(PositionTimeline position, double x, double perWeight) {
    double fixedX = x + WallColumn.SPINDLE_WIDTH;
    double fixedWidth = fixedWidth(position);
    double at = fixedX + fixedWidth;
    List<WallLane> lanes = new ArrayList<>();
    for (ToolSlide slide : slides(position)) {
      double width = perWeight * weight(position, slide);
      lanes.add(new WallLane(slide.id(), words(slide.kind()), at, width));
      at += width;
    }
    if (lanes.isEmpty()) {
      at += perWeight * IDLE_WEIGHT;
    }
    Place place = place(position);
    Rank rank = position.position() == timeline.governing() ? Rank.GOVERNS : Rank.FOLLOWS;
    return new WallColumn(position, place, x, at - x, fixedX, fixedWidth, lanes, rank);
  }

  private Place place(PositionTimeline position) {
    return position.position() > timeline.positions().size() ? Place.PICK_UP : Place.DRUM;
  }

  private List<ToolSlide> slides(PositionTimeline position) {
    if (place(position) == Place.PICK_UP) {
      return machine.pickUp() == null ? List.of() : machine.pickUp().slides();
    }
    return machine.positions().stream()
        .filter(place -> place.number() == position.position())
        .flatMap(place -> place.slides().stream())
        .toList();
  }

  private static double fixedWidth(PositionTimeline position) {
    return position.fixed().isEmpty() ? 0 : FIXED_WIDTH;
  }

  private static double weight(PositionTimeline position, List<ToolSlide> slides) {
    return slides.isEmpty()
        ? IDLE_WEIGHT
        : slides.stream().mapToDouble(slide -> weight(position, slide)).sum();
  }

  private static double weight(PositionTimeline position, ToolSlide slide) {
    boolean works =
        position.operations().stream().anyMatch(span -> span.slideId().equals(slide.id()));
    return works ? 1 : IDLE_WEIGHT;
  }

  private static String words(SlideKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }
}
