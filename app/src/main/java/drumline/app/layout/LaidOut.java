package drumline.app.layout;

import drumline.cycle.timeline.Timeline;
import drumline.economics.study.MoneyStudy;
import drumline.planner.check.TimelineReport;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.layout.Layout;
import java.util.Optional;

/**
 * A layout with what follows from it, kept rules or not.
 *
 * @param layout places and speeds
 * @param timeline the layout on the clock
 * @param audit independent check of the timeline
 * @param states the workpiece position by position
 * @param money output and cost; empty where the layout asks for what cannot be bought or made
 * @param moneyObstacle what keeps the money from being reckoned, or empty
 */
public record LaidOut(
    Layout layout,
    Timeline timeline,
    TimelineReport audit,
    WorkpieceStates states,
    Optional<MoneyStudy> money,
    String moneyObstacle) {}
