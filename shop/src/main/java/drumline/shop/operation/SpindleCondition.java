package drumline.shop.operation;

/** What the work spindle must do while an operation cuts. */
public enum SpindleCondition {
  /** Turn at the cutting speed. */
  TURNING,
  /** Stand still at an angle. */
  HELD,
  /** Move as a controlled axis with the tool. */
  C_AXIS,
  /** Turn at any speed: the tool is driven and adds or subtracts its own. */
  TURNING_ANY
}
