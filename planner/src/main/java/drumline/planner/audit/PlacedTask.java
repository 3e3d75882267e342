package drumline.planner.audit;

import drumline.planner.model.Layout;
import drumline.planner.model.Mode;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.Task;

/**
 * A task with its place.
 *
 * @param task the task
 * @param slide its slide
 * @param mode its mode
 * @param at its times
 */
record PlacedTask(Task task, Slide slide, Mode mode, Layout.Placement at) {
  String id() {
    return task.id();
  }

  int position() {
    return slide.position();
  }

  boolean overlaps(PlacedTask other) {
    return at.startMs() < other.at.endMs() && other.at.startMs() < at.endMs();
  }

  boolean isBefore(PlacedTask other) {
    return at.endMs() <= other.at.startMs();
  }

  boolean is(SpindleCondition condition) {
    return mode.condition() == condition;
  }

  /** Speed to which the spindle is brought: 0 at a standstill. */
  int speedRevPerMin() {
    return is(SpindleCondition.HELD) || is(SpindleCondition.C_AXIS) ? 0 : mode.revPerMin();
  }

  boolean stands() {
    return is(SpindleCondition.HELD) || is(SpindleCondition.C_AXIS);
  }

  String words() {
    return task.id() + " (" + at.startMs() + "–" + at.endMs() + " ms on " + slide.id() + ")";
  }
}
