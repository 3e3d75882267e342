package drumline.route.cut;

/** How holes lie to the work's axis: a driven tool's torque turns the work only along it. */
public enum HolesLie {
  /** Along the axis, on it or beside it. */
  ALONG_AXIS,
  /** From the side. */
  ACROSS_AXIS
}
