package drumline.planner.model;

/** What the work spindle does while a task runs. */
public enum SpindleCondition {
  /** The spindle turns at one speed, which every tool in cut at the same moment shares. */
  TURNING,
  /** The spindle stands still, held at an angle. */
  HELD,
  /** The spindle follows one tool as a controlled axis; nothing else may be in cut. */
  C_AXIS,
  /** The spindle changes its speed with one tool; nothing else may be in cut. */
  EXCLUSIVE_TURNING,
  /** A driven tool that adds or subtracts its own speed: the spindle may turn as others need it. */
  ANY;

  /** True if the spindle has stopped turning for the cut. */
  public boolean standsStill() {
    return this == HELD || this == C_AXIS;
  }
}
