package drumline.planner.slack;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.planner.model.PlanningProblem;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Levels the positions of a layout, with the cycle fixed: single operations move to other slides
 * while that makes the sum of the squares of the positions' times less. Level positions leave time
 * that {@link SlackSpending} turns into tool life.
 *
 * <p>Source: the smoothness index of line balancing, common practice.
 */
public final class Levelling {
  private static final int MOST_SWEEPS = 8;
  private static final double ROUNDING_S = 1e-6;
  private static final double LEAST_GAIN_S2 = 0.5;

  private final PlaceRules rules;
  private final CycleClock clock;
  private final double cycleS;
  private final Set<String> pinnedIds;

  private Levelling(PlaceRules rules, CycleClock clock, double cycleS, Set<String> pinnedIds) {
    this.rules = rules;
    this.clock = clock;
    this.cycleS = cycleS;
    this.pinnedIds = Set.copyOf(pinnedIds);
  }

  /**
   * The layout with leveller positions and the same cycle, or the same layout.
   *
   * @param problem what places the rules allow
   * @param pinnedIds operations that the user has placed; they stay
   * @throws IllegalArgumentException if the layout cannot be put on the clock
   */
  public static Layout level(
      PlanningProblem problem, CycleClock clock, Layout layout, Set<String> pinnedIds) {
    Levelling levelling =
        new Levelling(new PlaceRules(problem), clock, clock.timeline(layout).cycleS(), pinnedIds);
    Layout current = layout;
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      Layout better = levelling.sweep(current);
      if (better.equals(current)) {
        return current;
      }
      current = better;
    }
    return current;
  }

  private Layout sweep(Layout layout) {
    Layout current = layout;
    double unevenness = unevennessS2(clock.timeline(current));
    for (Placement placement : layout.placements()) {
      if (pinnedIds.contains(placement.operationId())) {
        continue;
      }
      for (String slideId : rules.slides(placement.operationId())) {
        Layout tried = moved(current, placement.operationId(), slideId);
        if (tried.equals(current) || !rules.allow(tried)) {
          continue; // no such place, or no room in it
        }
        Timeline timeline = clock.timeline(tried);
        double now = unevennessS2(timeline);
        if (timeline.cycleS() <= cycleS + ROUNDING_S && now < unevenness - LEAST_GAIN_S2) {
          current = tried;
          unevenness = now;
        }
      }
    }
    return current;
  }

  private static double unevennessS2(Timeline timeline) {
    return timeline.positions().stream()
        .mapToDouble(PositionTimeline::busyS)
        .map(busy -> busy * busy)
        .sum();
  }

  /**
   * The operation on another slide: in its new position after all that must come before it, or
   * first where something there must come after it.
   */
  private Layout moved(Layout layout, String operationId, String slideId) {
    Optional<Double> start = rules.findStart(layout, operationId, slideId);
    if (start.isEmpty()) {
      return layout;
    }
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : layout.placements()) {
      placements.add(
          placement.operationId().equals(operationId) && !placement.slideId().equals(slideId)
              ? new Placement(operationId, slideId, placement.spindleRevPerMin(), start.get())
              : placement);
    }
    return new Layout(layout.machineName(), placements);
  }
}
